import { useCallback, useEffect, useState } from "react";
import type * as Parts from "./laterParts";

export type LaterParts = typeof Parts;

export interface PartsComing {
  readonly parts: LaterParts | null; // null until they are here
  readonly failed: boolean;
  readonly ask: () => void;
}

/** Fetches the later parts as soon as the tabs are painted, whether or not somebody asks for them: a tab then opens at once. */
export function useLaterParts(): PartsComing {
  const [parts, setParts] = useState<LaterParts | null>(null);
  const [failed, setFailed] = useState(false);
  const ask = useCallback(() => {
    setFailed(false);
    import("./laterParts").then(setParts, () => setFailed(true));
  }, []);
  useEffect(ask, [ask]);
  return { parts, failed, ask };
}
