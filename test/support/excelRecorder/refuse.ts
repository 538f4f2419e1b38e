/** A refusal as Office.js gives it: with a code, and with our reason in words. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
    this.name = "OfficeExtension.Error";
  }
}

/** A fault of the program that uses the API, not of the workbook. */
export const misuse = (message: string): Refusal => new Refusal("InvalidArgument", message);
