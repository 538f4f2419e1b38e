/**
 * Lets the browser ask before the page goes, while something would go with it. It listens only then: a page that always
 * listens is not kept ready for going back.
 */
export function askOnLeaving(page: Pick<Window, "addEventListener" | "removeEventListener">): (ask: boolean) => void {
  const stop = (event: Event): void => event.preventDefault();
  let asks = false;
  return (ask) => {
    if (ask === asks) return;
    asks = ask;
    if (ask) page.addEventListener("beforeunload", stop);
    else page.removeEventListener("beforeunload", stop);
  };
}
