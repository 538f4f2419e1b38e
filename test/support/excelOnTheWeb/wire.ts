/** Requests of the real office.js, carried out on the recorder's objects: what those refuse is refused here. */
import { behind } from "../excelRecorder/held";
import { misuse, type Refusal } from "../excelRecorder/refuse";

/** How an object is reached, as office.js writes it. */
interface Path {
  readonly Name: string;
  readonly ObjectPathType: number;
  readonly ParentObjectPathId: number;
  readonly ArgumentInfo?: Given;
}

interface Given {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly number[]; // an object in the place of an argument
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Given;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface WireRequest {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, Path>>;
}

export interface WireAnswer {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly Location: string };
}

const PATH = { whole: 1, made: 2, method: 3, property: 4, item: 5, kept: 6, none: 7 };
const ACTION = { reach: 1, query: 2, call: 3, set: 4, trace: 5 };
const KEEP = "_KeepReference";
const BOOKKEEPING = "_"; // begins the names of what office.js does for itself: keeping objects, hearing of events
const SERVICE = /^Microsoft[.]/; // objects of Excel that are none of its API
const OPEN_COPY = "CreateAndOpenWorkbook"; // how Excel on the web is asked for a new workbook

export interface Context {
  readonly workbook: unknown;
  readonly sync: () => Promise<void>;
}

/** What Excel is asked beside the workbook; undefined for "nothing". */
export type Service = (call: string, given: readonly unknown[]) => unknown;

type ApiObject = Record<string, any>;

const call = (object: ApiObject, name: string, given: readonly unknown[]): ApiObject =>
  (object[name] as (...given: unknown[]) => ApiObject)(...given);

/** What office.js calls otherwise where it sets it: by the name on the wire, that of the API. */
const SET_AS = new Map([["Gridlines", "showGridlines"]]);

/** Names of the wire begin with a capital letter, those of the API do not. */
const small = (name: string): string => SET_AS.get(name) ?? name.charAt(0).toLowerCase() + name.slice(1);
const large = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** Carries out requests, one after the other. */
export function wireTo(context: Context, service: Service): (request: WireRequest) => Promise<WireAnswer> {
  const kept = new Map<string, ApiObject>(); // what office.js holds on to from one request to the next
  return async (request) => {
    const answers: Answer[] = [];
    let doing = "";
    let fault: unknown = null;
    try {
      const act = actor(request, context, kept, service);
      for (const action of request.Actions) {
        doing = action.Name;
        answers.push(...act(action));
      }
      doing = "";
    } catch (thrown) {
      fault = thrown;
    }
    try {
      await context.sync(); // what was asked before a refusal stays done, as in Excel
      if (fault === null) return { Results: answers.map(({ ActionId, value }) => ({ ActionId, Value: value() })) };
    } catch (thrown) {
      fault ??= thrown;
    }
    return { Results: [], Error: errorOf(fault, doing) };
  };
}

interface Answer {
  readonly ActionId: number;
  readonly value: () => unknown; // known after the request
}

/** Asks the recorder for each action of one request. */
function actor(
  { Actions, ObjectPaths }: WireRequest,
  context: Context,
  kept: Map<string, ApiObject>,
  service: Service,
): (action: Action) => Answer[] {
  const reached = new Map<number, ApiObject>();
  const keeps = new Map<number, string>(); // by path, under which name
  for (const { Name, ObjectPathId } of Actions)
    if (Name === KEEP && !keeps.has(ObjectPathId)) keeps.set(ObjectPathId, `kept ${kept.size + keeps.size}`);
  const pathOf = (id: number): Path => ObjectPaths[String(id)]!;
  const isService = (id: number): boolean => pathOf(id).ObjectPathType === PATH.made && SERVICE.test(pathOf(id).Name);
  const objectAt = (id: number): ApiObject => {
    if (!reached.has(id)) reached.set(id, reach(pathOf(id)));
    return reached.get(id)!;
  };
  const given = ({ Arguments = [], ReferencedObjectPathIds = [] }: Given = {}): unknown[] => {
    const all = Arguments.map((each, index) => {
      const id = ReferencedObjectPathIds[index] ?? 0;
      return id > 0 ? objectAt(id) : withObjects(each, objectAt);
    });
    while (all.length > 0 && all.at(-1) === null) all.pop(); // what was left out
    return all.map((each) => each ?? undefined);
  };
  const reach = ({ ObjectPathType, Name, ParentObjectPathId, ArgumentInfo }: Path): ApiObject => {
    if (ObjectPathType === PATH.whole) return context.workbook as ApiObject;
    if (ObjectPathType === PATH.kept) return kept.get(Name)!;
    const parent = objectAt(ParentObjectPathId);
    if (ObjectPathType === PATH.property) return parent[small(Name)];
    if (ObjectPathType === PATH.method) return call(parent, small(Name), given(ArgumentInfo));
    if (ObjectPathType === PATH.item) return call(parent, "getItem", given(ArgumentInfo));
    throw misuse(`a path of kind ${ObjectPathType}`);
  };
  const isOrNull = (id: number): boolean => {
    const { ObjectPathType, Name, ParentObjectPathId } = pathOf(id);
    if (ObjectPathType === PATH.method && Name.endsWith("OrNullObject")) return true;
    return [PATH.method, PATH.property].includes(ObjectPathType) && isOrNull(ParentObjectPathId);
  };
  return ({ Id, ActionType, Name, ObjectPathId, ArgumentInfo, QueryInfo }) => {
    const answer = (value: () => unknown): Answer[] => [{ ActionId: Id, value }];
    if (ActionType === ACTION.trace) return [];
    if (isService(ObjectPathId) || Name === OPEN_COPY) {
      const said = ActionType === ACTION.call ? service(Name, ArgumentInfo?.Arguments ?? []) : undefined;
      return answer(() => said ?? null);
    }
    if (Name.startsWith(BOOKKEEPING)) return answer(() => null);
    const object = objectAt(ObjectPathId);
    const about = (): { readonly _Id?: unknown } | null => aboutObject(object, isOrNull(ObjectPathId));
    if (ActionType === ACTION.reach) {
      const name = keeps.get(ObjectPathId);
      if (name === undefined) return answer(about);
      kept.set(name, object);
      return answer(() => about() && { _ReferenceId: name });
    }
    if (ActionType === ACTION.query) {
      const paths = (QueryInfo?.Select ?? []).map((path) => path.split("/").map(small));
      call(object, "load", [paths.map((path) => path.join("/")).join(",")]);
      return answer(() => about() && read(object, paths));
    }
    if (ActionType === ACTION.set) {
      object[small(Name)] = given(ArgumentInfo)[0];
      return [];
    }
    if (ActionType !== ACTION.call) throw misuse(`an action of kind ${ActionType}`);
    const result = call(object, small(Name), given(ArgumentInfo)) as ApiObject | undefined;
    return answer(() => result?.value ?? null);
  };
}

const errorOf = (fault: unknown, Location: string): Required<WireAnswer>["Error"] => {
  const { code = "GeneralException", message } = fault as Partial<Refusal> & Error;
  return { Code: code, Message: message, Location };
};

/** Objects inside plain data. */
function withObjects(value: unknown, objectAt: (id: number) => ApiObject): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  if ("_ObjectPathId" in value) return objectAt(value._ObjectPathId as number);
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, withObjects(inner, objectAt)]));
}

/** By what office.js finds an object again: nothing where the request itself deleted it, null where there never was one. */
function aboutObject(object: ApiObject, orNull: boolean): { readonly _Id?: unknown } | null {
  try {
    const { id, name } = behind(object) as { readonly id?: string; readonly name?: string };
    return { _Id: id ?? name };
  } catch (fault) {
    if ((fault as Refusal).code !== "ItemNotFound") throw fault;
    return orNull ? null : {};
  }
}

/** What was asked for, under the names of the wire; of a collection, of each of its items. */
function read(object: ApiObject, paths: readonly string[][]): object {
  const items = itemsOf(object);
  if (items !== null) {
    const rests = paths.map((path) => (path[0] === "items" ? path.slice(1) : path));
    return { _Items: items.map((item) => ({ ...aboutObject(item, false), ...read(item, rests) })) };
  }
  const inner = new Map<string, string[][]>();
  for (const [first, ...rest] of paths as [string, ...string[]][])
    inner.set(first, [...(inner.get(first) ?? []), rest]);
  return Object.fromEntries(
    [...inner].map(([name, rests]) => [
      large(name),
      rests.every((rest) => rest.length === 0) ? object[name] : read(object[name], rests),
    ]),
  );
}

function itemsOf(object: ApiObject): ApiObject[] | null {
  try {
    return object.items;
  } catch {
    return null; // it is no collection
  }
}
