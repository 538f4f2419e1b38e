import { kindNamed, type Member } from "./members";
import { misuse } from "./refuse";

/** The level of the Excel that is played: 12 is what the host needs, and it asks before it uses more. */
export const played = { level: 12 };

/** A member as the typings have it; refuses what they do not know, and what only a later Excel has. */
export function memberOf(kind: string, name: string): Member {
  const members = kindNamed(kind)?.members;
  if (members === undefined) throw misuse(`the typings have no ${kind}`);
  const member = members.get(name);
  if (member === undefined) throw misuse(`${kind} has no member ${name}`);
  if (member.level > played.level) {
    throw misuse(
      `${kind}.${name} needs ${member.level === Infinity ? "more than a numbered set" : `ExcelApi 1.${member.level}`}`,
    );
  }
  return member;
}

/** Whether a value fits one of the types; words must be among those that a type lists. */
export function checkValue(where: string, value: unknown, types: readonly string[]): void {
  if (typeof value === "string") {
    const listed = types.some(
      (type) => type.includes(`"${value}"`) || /\b(string|any)\b/.test(type.replace(/"[^"]*"/g, "")),
    );
    if (!listed) throw misuse(`${where} cannot be "${value}"`);
    return;
  }
  if (typeof value === "number" && !types.some((type) => /\b(number|any)\b/.test(type)))
    throw misuse(`${where} is no number`);
  if (typeof value === "boolean" && !types.some((type) => /\b(boolean|any)\b/.test(type))) {
    throw misuse(`${where} is no truth value`);
  }
  if (isPlain(value)) {
    const kind = types.map(plainKind).find((each) => each !== null);
    if (kind) checkPlain(kind, withoutAdded(value, types));
  }
}

/** A plain object's members, one by one and inwards. */
function checkPlain(kind: string, value: Record<string, unknown>): void {
  for (const [name, inner] of Object.entries(value)) {
    const member = memberOf(kind, name);
    checkValue(`${kind}.${name}`, inner, member.types);
  }
}

/** A type such as "Options & { columnWidth?: boolean }" adds members of its own to those of Options. */
const withoutAdded = (value: Record<string, unknown>, types: readonly string[]): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(value).filter(([name]) => !types.some((type) => new RegExp(`& \\{[^]*\\b${name}\\?:`).test(type))),
  );

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** The name of a class in a type such as "Excel.Range" or "Excel.Range[]"; null if it is none. */
export const classIn = (type: string): string | null => nameIn(type, true);
const plainKind = (type: string): string | null => nameIn(type, false);

function nameIn(type: string, isClass: boolean): string | null {
  for (const [, name] of type.matchAll(/(?:Excel[.])?\b([A-Z]\w+)/g)) {
    if (kindNamed(name!)?.isClass === isClass) return name!;
  }
  return null;
}
