import { useCallback, useEffect, useRef, useState } from "react";
import type { SheetHost } from "../../hosts/host";
import { seenIn } from "../check/seenIn";
import { calculate } from "../functions/pageWorker";
import { useChanges } from "../hostUse/useChanges";
import { failureWords } from "../hostUse/words";
import { type SystemSeen, systemOf } from "./systemOf";

const NEVER = -1;
const PAUSE = 400; // ms without a change before the book is read again

/**
 * The owner's system, read again after each change while it is shown. Where reading a book takes long, only when it is asked for.
 *
 * @param shown whether it is in front: nothing is read for a view that nobody sees
 */
export function useSystem(
  host: SheetHost,
  shown: boolean,
): { system: SystemSeen | null; status: string; isStale: boolean; show: () => void } {
  const [system, setSystem] = useState<SystemSeen | null>(null);
  const [status, setStatus] = useState("");
  const [readAt, setReadAt] = useState(NEVER);
  const asked = useRef(0); // only the last question's answer counts
  const asks = host.kind === "excel";
  const { drawn, now } = useChanges(asks && readAt === NEVER ? null : host);
  const { changes } = drawn;
  const isStale = readAt !== changes;
  const show = useCallback((): void => {
    const question = (asked.current += 1);
    setReadAt(now().changes);
    void host
      .readBook()
      .then((book) => systemOf(seenIn(book), calculate))
      .then(
        (seen) => {
          if (question !== asked.current) return;
          setSystem(seen);
          setStatus("");
        },
        (error: unknown) => question === asked.current && setStatus(failureWords(error)),
      );
  }, [host, now]);
  useEffect(() => {
    if (!shown || !isStale || asks) return;
    const timer = setTimeout(show, PAUSE);
    return () => clearTimeout(timer);
  }, [host, asks, shown, isStale, changes, show]);
  return { system, status, isStale, show };
}
