/** What an engine shows: by sheet, then by address; numbers to the last digit, errors and texts as text. */
export type EngineValues = ReadonlyMap<string, ReadonlyMap<string, number | string>>;
