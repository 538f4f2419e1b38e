import { checkValue, classIn, memberOf } from "./check";
import { behind, clientResult, isData, sizeOf, STATE } from "./held";
import { misuse, Refusal } from "./refuse";

/** How one class of the API is played: what its members do to the state behind an object. Member names are the API's. */
export interface Played {
  readonly reads?: Record<string, (state: any) => unknown>;
  readonly writes?: Record<string, (state: any, value: any) => void>;
  readonly parts?: Record<string, (state: any) => unknown>;
  readonly calls?: Record<string, (state: any, ...given: any[]) => unknown>;
  readonly items?: (state: any) => unknown[];
}

/** What a batch is waiting to do, and how the objects of that batch find what stands behind them. */
export interface Batch {
  readonly played: Readonly<Record<string, Played>>;
  readonly queue: (() => void)[];
  readonly addHandler: (state: unknown, event: string, handler: () => Promise<void>) => () => void;
  context: unknown; // what the user of the API holds of this batch
  bytes: number; // written and read in this request
  turn: number; // requests so far
}

interface Loadable {
  readonly load: (paths: string) => void;
}

/** An object of the API. Nothing is done before the batch is synchronised, and nothing can be read before it is loaded. */
export function clientObject(batch: Batch, kind: string, find: () => unknown, orNull = false): any {
  const played = batch.played[kind];
  if (played === undefined) throw misuse(`the recorder does not play ${kind}`);
  const loaded = new Map<string, unknown>();
  const parts = new Map<string, Loadable>();
  let isNull: boolean | null = null;
  let itemsOf = -1; // the request that brought the items
  const state = (): any => {
    const found = find();
    if (found === undefined) throw new Refusal("InvalidObjectPath", `${kind} is not there yet`);
    if (found === null) throw new Refusal("ItemNotFound", `${kind} does not exist`);
    if ((found as { isDeleted?: boolean }).isDeleted) throw new Refusal("ItemNotFound", `${kind} was deleted`);
    return found;
  };
  const part = (name: string): Loadable => {
    if (!parts.has(name)) {
      const inner = classIn(memberOf(kind, name).types[0]!)!;
      const from = played.parts?.[name];
      if (from === undefined) throw misuse(`the recorder does not play ${kind}.${name}`);
      parts.set(
        name,
        clientObject(batch, inner, () => (orNull && find() === null ? null : from(state()))),
      );
    }
    return parts.get(name)!;
  };
  const loadOne = (path: string): void => {
    const [first, ...rest] = path.split("/") as [string, ...string[]];
    if (played.items !== undefined) return loadItems(first === "items" ? rest.join("/") : path);
    const member = memberOf(kind, first);
    if (member.isMethod) throw misuse(`${kind}.${first} is no property`);
    if (rest.length > 0) return part(first).load(rest.join("/"));
    if (classIn(member.types[0]!) !== null && played.reads?.[first] === undefined) {
      throw misuse(`${kind}.${first} is an object: load one of its properties`);
    }
    const read = played.reads?.[first];
    if (read === undefined) throw misuse(`the recorder does not play ${kind}.${first}`);
    batch.queue.push(() => {
      if (noteNull()) return;
      const value = structuredClone(read(state()));
      batch.bytes += JSON.stringify(value ?? null).length;
      loaded.set(first, value);
    });
  };
  const loadItems = (path: string): void => {
    const itemKind = classIn(memberOf(kind, "items").types[0]!)!;
    for (const name of path.split(",")) memberOf(itemKind, name.split("/")[0]!);
    batch.queue.push(() => {
      const before = batch.queue.length;
      if (itemsOf !== batch.turn) {
        itemsOf = batch.turn;
        loaded.set(
          "items",
          played.items!(state()).map((item) => clientObject(batch, itemKind, () => item)),
        );
      }
      for (const item of loaded.get("items") as Loadable[]) item.load(path);
      for (const work of batch.queue.splice(before)) work();
    });
  };
  const noteNull = (): boolean => {
    if (orNull) isNull = find() === null;
    return isNull === true;
  };
  const call = (name: string, given: unknown[]): unknown => {
    const member = memberOf(kind, name);
    const run = played.calls?.[name];
    if (run === undefined) throw misuse(`the recorder does not play ${kind}.${name}()`);
    given.forEach((each, index) => {
      const types = member.parameters.map((overload) => overload[index] ?? "").filter((type) => type !== "");
      if (types.length === 0) throw misuse(`${kind}.${name}() takes no argument ${index + 1}`);
      checkValue(`${kind}.${name}() argument ${index + 1}`, each, types);
    });
    const result: { value?: unknown } = {};
    const type = member.types[0]!;
    batch.queue.push(() => {
      if (orNull && find() === null) result.value = null;
      else result.value = run(state(), ...given.map(behind));
      batch.bytes += sizeOf(type.includes("ClientResult") ? [...given, result.value] : given);
    });
    if (type === "void") return undefined;
    if (type.includes("ClientResult")) return clientResult(result);
    return clientObject(batch, classIn(type)!, () => result.value, name.endsWith("OrNullObject"));
  };
  const event = (name: string): unknown => ({
    add: (handler: () => Promise<void>) => {
      let remove: (() => void) | null = null;
      batch.queue.push(() => (remove = batch.addHandler(state(), name, handler)));
      return {
        context: batch.context,
        remove: () => batch.queue.push(() => (remove === null ? undefined : remove())),
      };
    },
  });
  return new Proxy(Object.create(null) as object, {
    get: (_, name) => {
      if (name === STATE) return state;
      if (typeof name === "symbol" || name === "then") return undefined;
      if (name === "load")
        return (paths: string) => (
          paths
            .split(",")
            .map((each) => each.trim())
            .forEach(loadOne),
          undefined
        );
      if (name === "isNullObject") {
        if (isNull === null && orNull)
          throw new Refusal("PropertyNotLoaded", `${kind}.isNullObject is read before sync`);
        return isNull === true;
      }
      const member = memberOf(kind, name);
      if (member.isMethod) return (...given: unknown[]) => call(name, given);
      if (member.types[0]!.includes("EventHandlers")) return event(name);
      if (name !== "items" && classIn(member.types[0]!) !== null && played.reads?.[name] === undefined)
        return part(name);
      if (!loaded.has(name)) throw new Refusal("PropertyNotLoaded", `${kind}.${name} is read before load and sync`);
      return loaded.get(name);
    },
    set: (_, name, value) => {
      const member = memberOf(kind, String(name));
      if (member.isReadonly || member.isMethod) throw misuse(`${kind}.${String(name)} cannot be set`);
      checkValue(`${kind}.${String(name)}`, value, member.types);
      const write = played.writes?.[String(name)];
      if (write === undefined) throw misuse(`the recorder does not take ${kind}.${String(name)}`);
      const kept = isData(value) ? structuredClone(value) : value;
      batch.queue.push(() => {
        batch.bytes += sizeOf([kept]);
        write(state(), behind(kept));
      });
      return true;
    },
  });
}
