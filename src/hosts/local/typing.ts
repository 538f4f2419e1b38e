import { offeredWord } from "./offeredWord";

/** What the grid knows of the text that is being typed, as far as we use it. */
interface TypedText {
  readonly editionMode: string; // "inactive" where nothing is being typed
  readonly currentContent: string;
  readonly composerSelection: { readonly start: number; readonly end: number };
  readonly autoCompleteProposals: readonly { readonly text: string }[];
  readonly autoCompleteSelectedIndex: number | undefined;
  moveAutoCompleteSelection(direction: "next"): void;
  stopEdition(): void; // as entered
}

/** The field in which one types: a cell's, or that of the formula bar. */
interface Field {
  readonly props: { readonly composerStore: TypedText };
  readonly contentHelper: {
    getText(): string;
    setText(lines: unknown): void;
    selectRange(start: number, end: number): void;
  };
  readonly compositionActive: boolean; // a letter of several keys is not complete yet
  getContentLines(): unknown;
  onKeydown: (this: Field, event: KeyboardEvent) => void;
  onKeyup: (this: Field, event: KeyboardEvent) => void;
}

/** What holds the field of the cells. */
interface FieldInGrid {
  readonly composerStore: TypedText;
  setup: (this: FieldInGrid) => void;
}

interface Parts {
  readonly GridComposer: { readonly prototype: FieldInGrid; readonly components: { Composer: { prototype: Field } } };
}

let inGrid: TypedText | null = null;
let answered = (): void => undefined;

/** Whether something is being typed in a cell. */
export const isTyping = (): boolean => inGrid !== null && inGrid.editionMode !== "inactive";

/** What is being typed in a cell; empty where nothing is. */
export const typedText = (): string => (isTyping() && inGrid !== null ? inGrid.currentContent : "");

/** Enters what is being typed in a cell. A formula stays open: one goes to other sheets for its cells. */
export function enterTyped(): void {
  if (isTyping() && inGrid?.currentContent.startsWith("=") === false) inGrid.stopEdition();
}

/** Has this called whenever the field has done what a key asks, before the next key. */
export function afterEachKey(then: () => void): void {
  answered = then;
}

/**
 * Lets keys count in the order in which they are pressed. The grid draws the field some time after each key, and after a
 * change only when all is computed; it then reads what the browser had put beside the text that stood there before. So
 * 120 became 400120 for whoever typed on. Here each key finds the field as the keys before left it.
 *
 * Tab takes the word that is offered, which the grid's own Tab does only where the arrow keys have chosen one.
 */
export function keysInOrder(): void {
  const { GridComposer } = (o_spreadsheet.components.Grid as unknown as { components: Parts }).components;
  const grid = GridComposer.prototype;
  const begin = grid.setup;
  grid.setup = function () {
    begin.call(this);
    inGrid = this.composerStore;
  };
  const field = GridComposer.components.Composer.prototype;
  const { onKeydown, onKeyup } = field;
  field.onKeydown = function (event) {
    catchUp(this);
    const { key, shiftKey, ctrlKey, altKey, metaKey } = event;
    if (key === "Tab" && !shiftKey && !ctrlKey && !altKey && !metaKey) chooseOffered(this.props.composerStore);
    onKeydown.call(this, event);
    answered();
  };
  field.onKeyup = function (event) {
    catchUp(this);
    onKeyup.call(this, event);
  };
}

/** Shows in the field what it should hold, with the caret where it should be, unless it does. */
function catchUp(field: Field): void {
  const { editionMode, currentContent, composerSelection } = field.props.composerStore;
  if (editionMode === "inactive" || field.compositionActive || field.contentHelper.getText() === currentContent) return;
  field.contentHelper.setText(field.getContentLines());
  field.contentHelper.selectRange(composerSelection.start, composerSelection.end);
}

/** Chooses it in the list as the arrow keys would. None where one is chosen. */
function chooseOffered(typed: TypedText): void {
  if (typed.editionMode === "inactive" || typed.autoCompleteSelectedIndex !== undefined) return;
  const words = typed.autoCompleteProposals.map(({ text }) => text);
  const offered = offeredWord(typed.currentContent, words);
  if (offered === null) return;
  for (let step = 0; step <= offered.place; step++) typed.moveAutoCompleteSelection("next");
}
