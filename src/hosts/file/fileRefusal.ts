/** Why a file is not read or written: one sentence for the person who chose it. Nothing else is changed by it. */
export class FileRefusal extends Error {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = "FileRefusal";
  }
}
