/** For a file that a program never wrote for a person, but somebody to exhaust a reader. */
export const TOO_LARGE = "This file unpacks to more than a workbook of budgets ever needs, so it is not opened.";

/** Why a file is not read or written: one sentence for the person who chose it. Nothing else is changed by it. */
export class FileRefusal extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = "FileRefusal";
  }
}
