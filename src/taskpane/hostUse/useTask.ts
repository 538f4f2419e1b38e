import { useCallback, useRef, useState } from "react";
import type { Watch } from "../../hosts/host";
import { failureWords } from "./words";

/** A long action: what it does, how far it is, and what it said when it ended. */
interface TaskState {
  readonly running: string | null; // its name while it runs
  readonly done: number;
  readonly of: number;
  readonly what: string;
  readonly outcome: readonly string[]; // sentences
}

export interface Tasking {
  readonly state: TaskState;
  readonly run: (name: string, work: (watch: Watch) => Promise<readonly string[]>) => void;
  readonly cancel: () => void;
  /** Takes back what the last one said, as when it was said of another book. One that runs goes on. */
  readonly forget: () => void;
}

const idle: TaskState = { running: null, done: 0, of: 0, what: "", outcome: [] };

/** Runs one long action at a time; it can be cancelled, and tells its outcome in sentences. */
export function useTask(): Tasking {
  const [state, setState] = useState(idle);
  const running = useRef<AbortController | null>(null);

  const work = async (name: string, doIt: (watch: Watch) => Promise<readonly string[]>): Promise<void> => {
    const controller = new AbortController();
    running.current = controller;
    setState({ ...idle, running: name, what: `${name} …` });
    const progress: Watch["progress"] = (done, of, what) => {
      if (running.current === controller) setState({ ...idle, running: name, done, of, what });
    };
    let outcome: readonly string[];
    try {
      outcome = await doIt({ progress, signal: controller.signal });
    } catch (error) {
      outcome = [controller.signal.aborted ? "Cancelled." : failureWords(error)];
    }
    running.current = null;
    setState({ ...idle, outcome });
  };
  return {
    state,
    run: (name, doIt) => {
      if (running.current === null) void work(name, doIt);
    },
    cancel: () => running.current?.abort(),
    forget: useCallback(() => {
      if (running.current === null) setState(idle);
    }, []),
  };
}
