/**
 * Opens a file that is dropped onto a window as the button Open does. The browser itself would show or download it elsewhere, and
 * leave the page as it was without a word.
 */
export function openDropped(place: Window, open: (file: File) => void): void {
  const withFiles = (then: (files: FileList) => void) => (event: DragEvent) => {
    const data = event.dataTransfer;
    if (data === null || !data.types.includes("Files")) return; // the grid's own things are dragged, too
    event.preventDefault();
    then(data.files);
  };
  place.addEventListener(
    "dragover",
    withFiles(() => undefined),
  );
  place.addEventListener(
    "drop",
    withFiles(([file]) => {
      if (file !== undefined) open(file);
    }),
  );
}
