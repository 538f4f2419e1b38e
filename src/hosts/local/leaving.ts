/**
 * Lets the browser ask before the page goes, while something would go with it: changes that are kept nowhere, or what is
 * being typed and not entered. It listens only then: a page that always listens is not kept ready for going back.
 */
export function askOnLeaving(
  page: Pick<Window, "addEventListener" | "removeEventListener">,
  sheet: Pick<HTMLElement, "addEventListener">,
  isTyping: () => boolean,
): (unkept: boolean) => void {
  let unkept = false;
  const wouldLose = (): boolean => unkept || isTyping();
  const stop = (event: Event): void => {
    if (wouldLose()) event.preventDefault();
  };
  const listen = (): void => {
    if (wouldLose()) page.addEventListener("beforeunload", stop);
    else page.removeEventListener("beforeunload", stop);
  };
  sheet.addEventListener("keyup", listen);
  return (now) => {
    unkept = now;
    listen();
  };
}
