import { laterNoteWords } from "./laterNoteWords";

/** A note's words; of one that readers know again, its mark. */
interface NoteWords {
  readonly mark?: string;
  readonly words: string;
}

/**
 * What the notes of whole-table functions say, by what they mean. {such} stands for a value, and {mark} for the words by
 * which a reader in a sheet, in a copy or in Check knows the note again: nobody reads the rest. A mark stands in no other
 * note of a run.
 */
export const noteWords = {
  // of a run, by BUDGET and SOLVE
  settles: { mark: "dust settles", words: '{mark}: "{dust}" needs {velocity}' },
  tooFast: { mark: "too fast", words: "{mark}: over {velocity} only costs pressure and wears the duct" },
  leaky: { mark: "leak carries", words: "its {mark} {percent} % of its air" },
  gateShut: { mark: "gate shut", words: "{mark}: only its leak flows" },
  cutOff: { mark: "a shut gate cuts it off", words: "{mark}" },
  // of a run, by BUDGET
  askedInVain: { mark: "the airflow typed here is not used", words: "{mark}: what joins it adds up" },
  asksForNone: { mark: "no airflow is asked for here", words: "{mark}" },
  noneAsksThroughIt: { mark: "no open hood asks for air through it", words: "{mark}" },
  blowsDustOut: { mark: "a leak on the discharge side", words: "{mark} blows dust out and is not counted" },
  hoseLies: { mark: "its hose costs", words: "{mark} {times} times what it would drawn out" },
  straightOn: {
    mark: "runs straight on",
    words: "{mark} past a branch: what that costs it, by the airflows, is among its fittings",
  },
  branchAlone: { mark: "its branch joins no run", words: "{mark}, so its K goes by the angle alone" },
  exitNamed: {
    mark: "an exit against fan static pressure",
    words: "{mark} counts only beyond the velocity pressure at the fan's outlet",
  },
  resize: { mark: "resize", words: "{mark}: its path needs {percent} % less suction than the junction has" },
  metalWithWood: { mark: "metal with wood: sparks", words: "{mark} or metal and dust that burns share this duct" },
  likelyMetal: {
    mark: "metal with wood: by",
    words: "{mark} their names, sparks and dust that burns may share this duct",
  },
  waits: { mark: "waits for", words: "{mark} {what}" }, // also of the fan
  waitsForMissing: { mark: "which no row has", words: "run {run}, {mark}{nearest}" },
  waitsForLast: { words: 'a run whose To is "fan"' },
  // of a run, by SOLVE
  onlyLeaksFlow: { mark: "no open hood: only leaks flow", words: "{mark}" },
  nothingFlows: { mark: "no open hood: nothing flows", words: "{mark}" },
  short: { mark: "the hood gets", words: "{mark} {share} of the {airflow} wanted" },
  // of the fan, by BUDGET
  noneAsks: { words: "no open hood asks for air" },
  fanAsked: { words: "fan asked for: {airflow} at {pressure} fan static pressure" },
  otherAir: { words: " in this air; on a curve for standard air look for {pressure}" }, // behind what the fan is asked for
  // of the fan, by SOLVE and SCENARIOS
  allShut: { words: "everything is shut: no air moves" },
  noLeak: { words: "no leak is counted: none before the fan is entered for the gates as they are" },
  lost: { words: "{percent} % of the air is lost to leaks" },
  hump: { words: "the curve has a hump: fan and system meet at {count} points, {airflow} is the stable one" },
  twoStable: {
    words:
      "the curve has a hump: fan and system meet at {count} points, and two are stable: {airflow}, which is given here, and {less}, at which a fan that starts from rest stays",
  },
  // of TOGETHER, SCENARIOS and GAINS with the goal "work", as sheets and the pane know them again
  worksTogether: { mark: "works together", words: "{mark}: each hood has its air, and dust keeps moving" },
  worksAlone: { mark: "works alone", words: "{mark}: the hood has its air, and dust keeps moving" },
  tooSlow: { words: "too slow for the dust: {runs}" },
  worksThen: { words: "then the hood has its air, and its dust is carried" },
  worksNow: { words: "nothing to mend: the hood has its air, and its dust is carried" },
  carriedNow: { words: "nothing to mend: its dust is carried, and it wants no airflow" },
  ...laterNoteWords,
} as const satisfies Readonly<Record<string, NoteWords>>;

/** What stands between two notes of a run. */
export const BETWEEN_NOTES = "; ";

/** What a hood gets of what it wants where its air runs the other way. */
export const BLOWS_OUT = "nothing (air blows out of it)";
