import type { CellPosition } from "./grid";

/** Cells whose text is an address, as the grid evaluates them. */
interface EvaluatedCell {
  link?: unknown;
}

interface Menu {
  children?: { readonly id?: string }[];
}

/**
 * Takes every link from the grid. Its library makes a link of any text that looks like an address, shows the icon of a foreign
 * host when the pointer rests on it, opens it with a way back to this page, and counts [5](address) as the number 5. Here a
 * text is a text, wherever it came from.
 */
export function removeLinks(): void {
  const { urlRegistry, cellPopoverRegistry, clickableCellRegistry, cellMenuRegistry, topbarMenuRegistry } =
    o_spreadsheet.registries;
  for (const key of urlRegistry.getKeys()) urlRegistry.remove(key);
  const none = {
    sequence: 0,
    title: "",
    match: () => true,
    createLink: () => undefined, // so [5](address) is what it says
    urlRepresentation: (url: string) => url,
    open: () => undefined,
  };
  urlRegistry.add("none", none as never);
  cellPopoverRegistry.remove("LinkCell");
  cellPopoverRegistry.remove("LinkEditor"); // behind Ctrl+K as well
  clickableCellRegistry.remove("link");
  cellMenuRegistry.remove("insert_link");
  const insert = topbarMenuRegistry.get("insert") as Menu;
  insert.children = (insert.children ?? []).filter(({ id }) => id !== "insert_link");
  removeFromPlainAddresses();
  replaceHyperlink();
}

/** A bare address is made a link without asking the registry, so it is taken away where the cell is read. */
function removeFromPlainAddresses(): void {
  const registry = o_spreadsheet.registries.coreViewsPluginRegistry;
  const Evaluation = registry.get("evaluation") as unknown as new (...args: never[]) => {
    getEvaluatedCell(position: CellPosition): EvaluatedCell;
  };
  class WithoutLinks extends Evaluation {
    override getEvaluatedCell(position: CellPosition): EvaluatedCell {
      const cell = super.getEvaluatedCell(position);
      if (cell.link !== undefined) delete cell.link;
      return cell;
    }
  }
  registry.replace("evaluation", WithoutLinks as never);
}

/** HYPERLINK shows its label, as in Excel, and leads nowhere. */
function replaceHyperlink(): void {
  const { functionRegistry } = o_spreadsheet.registries;
  const described = functionRegistry.get("HYPERLINK");
  functionRegistry.replace("HYPERLINK", {
    ...described,
    compute: (url: { readonly value: unknown } | undefined, label: { readonly value: unknown } | undefined) =>
      label ?? url,
  } as never);
}
