/** What office.js tells Excel beside the workbook: that the functions are there, what cells show, that a copy is to be opened. */
import type { Recorder } from "../excelRecorder/recorder";
import { type CellAnswer, readAnswer } from "./cells";
import type { Service } from "./wire";

export interface Tellings {
  readonly service: Service;
  readonly functionsReady: Promise<void>;
  readonly isReady: () => boolean;
  readonly answerTo: (number: number) => Promise<CellAnswer>;
}

export function tellings({ opened }: Recorder): Tellings {
  const waiting = new Map<number, (answer: CellAnswer) => void>();
  let isReady = false;
  let tellReady: () => void;
  const functionsReady = new Promise<void>((resolve) => (tellReady = resolve));
  const services: Readonly<Record<string, (...given: any[]) => unknown>> = {
    _SetOsfControlContainerReadyForCustomFunctions: () => {
      isReady = true;
      tellReady();
    },
    SetInvocationArrayResults: (results: Parameters<typeof readAnswer>[0][]) => {
      for (const [number, answer] of results.map(readAnswer)) waiting.get(number)?.(answer);
    },
    CreateAndOpenWorkbook: (base64: string) => void opened.push(base64),
  };
  return {
    service: (call, given) => services[call]?.(...given),
    functionsReady,
    isReady: () => isReady,
    answerTo: (number) => new Promise((resolve) => waiting.set(number, resolve)),
  };
}
