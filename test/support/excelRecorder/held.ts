import { Refusal } from "./refuse";

/** Under this an object of the API tells, to the recorder alone, what stands behind it. */
export const STATE = Symbol("state");

interface Held {
  readonly [STATE]: () => unknown;
}

const isHeld = (value: unknown): value is Held =>
  typeof value === "object" && value !== null && (value as Partial<Held>)[STATE] !== undefined;

/** What stands behind an object, also of those inside plain data; anything else is given back as it is. */
export function behind(value: unknown): unknown {
  if (isHeld(value)) return value[STATE]();
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, behind(inner)]));
}

/** Whether a value holds no object of the API, even inside. */
export const isData = (value: unknown): boolean =>
  typeof value !== "object" || value === null || (!isHeld(value) && Object.values(value).every(isData));

export const sizeOf = (values: readonly unknown[]): number => JSON.stringify(values.filter(isData)).length;

/** What a method answers that has no object: known after the request only. */
export function clientResult(result: { value?: unknown }): unknown {
  return {
    get value() {
      if (!("value" in result)) throw new Refusal("ValueNotLoaded", "a result is read before sync");
      return result.value;
    },
  };
}
