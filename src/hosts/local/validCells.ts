import type { CellPosition } from "./grid";

interface Rule {
  readonly isBlocking?: boolean;
}

interface Validation {
  readonly getters: {
    readonly getValidationRuleForCell: (position: CellPosition) => Rule | undefined;
    readonly getEvaluatedCell: (position: CellPosition) => { readonly value: unknown };
  };
  getValidationResultForCell(position: CellPosition): { readonly isValid: boolean };
}

/**
 * Marks no valid cell as invalid. The grid puts a red corner on every cell whose value is not in its list; but a list that
 * only suggests takes other values, such as a number in place of a name, and a formula that shows nothing is as good as blank.
 */
export function markNoValidCell(): void {
  const registry = o_spreadsheet.registries.coreViewsPluginRegistry;
  const DataValidation = registry.get("data_validation_ui") as unknown as new (...args: never[]) => Validation;
  class OnlyStrictLists extends DataValidation {
    override getValidationResultForCell(position: CellPosition): { readonly isValid: boolean } {
      const isSuggestion = this.getters.getValidationRuleForCell(position)?.isBlocking !== true;
      if (isSuggestion || this.getters.getEvaluatedCell(position).value === "") return { isValid: true };
      return super.getValidationResultForCell(position);
    }
  }
  registry.replace("data_validation_ui", OnlyStrictLists as never);
}
