// What the commands have in common: --help says how each is used, and a failure is one sentence.
import { parseArgs, type ParseArgsConfig } from "node:util";

/** Does the work of a command with what was typed behind its name, or says how it is used. */
export function command(usage: string, work: (args: string[]) => Promise<void>, failed = ""): void {
  const args = process.argv.slice(2);
  if (args.includes("--help") || args.includes("-h")) {
    console.log(usage);
    return;
  }
  work(args).catch((error: unknown) => {
    console.error(`${failed}${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  });
}

/** The options of a command; a sentence with its usage where one of them is not known. */
export function readOptions<Config extends ParseArgsConfig>(config: Config, usage: string) {
  try {
    return parseArgs(config);
  } catch (error) {
    const why = error instanceof Error ? error.message.split(". ")[0] : String(error);
    throw new Error(`${why}; the command is ${usage}`, { cause: error });
  }
}
