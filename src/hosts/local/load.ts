import type { FunctionsFile } from "../functionsFile";

/** Runs a script file of our own origin, as a script tag would. */
export function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(`${address} could not be loaded`)));
    document.head.append(script);
  });
}

async function fetched(address: string): Promise<Response> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} could not be loaded (status ${response.status})`);
  return response;
}

export const loadText = async (address: string): Promise<string> => (await fetched(address)).text();

export const loadFunctionsFile = async (address: string): Promise<FunctionsFile> =>
  (await (await fetched(address)).json()) as FunctionsFile;
