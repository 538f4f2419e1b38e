import type { Finding, CheckRule } from "./finding";
import { bookSettings } from "./rules/bookSettings";
import { countedUp } from "./rules/countedUp";
import { dayForNumber } from "./rules/dayForNumber";
import { earlierVersion } from "./rules/earlierVersion";
import { farOut } from "./rules/farOut";
import { fanShort } from "./rules/fanShort";
import { longHose } from "./rules/longHose";
import { metalWithWood } from "./rules/metalWithWood";
import { mergedCells } from "./rules/mergedCells";
import { meterArea } from "./rules/meterArea";
import { noDevice } from "./rules/noDevice";
import { noGate } from "./rules/noGate";
import { noLength } from "./rules/noLength";
import { notes } from "./rules/notes";
import { percentForNumber } from "./rules/percentForNumber";
import { plasticPipe } from "./rules/plasticPipe";
import { risingCurve } from "./rules/risingCurve";
import { refusal } from "./rules/refusal";
import { seatSide } from "./rules/seatSide";
import { settling } from "./rules/settling";
import { smallerMain } from "./rules/smallerMain";
import { tooWide } from "./rules/tooWide";
import { strangeFan } from "./rules/strangeFan";
import { tightElbow } from "./rules/tightElbow";
import { typedOver } from "./rules/typedOver";
import { unitsLeftOut } from "./rules/unitsLeftOut";
import { unreadColumn } from "./rules/unreadColumn";
import { unsure } from "./rules/unsure";
import { unknownFunction } from "./rules/unknownFunction";
import type { Seen } from "./seenIn";

/** Gravest first: what makes or stops every number, then what is dangerous, then what costs air. */
const rules: readonly CheckRule[] = [
  bookSettings,
  earlierVersion,
  unknownFunction,
  refusal,
  unitsLeftOut,
  typedOver,
  dayForNumber,
  percentForNumber,
  mergedCells,
  countedUp,
  risingCurve,
  strangeFan,
  unreadColumn,
  farOut,
  noLength,
  noDevice,
  noGate,
  metalWithWood,
  settling,
  tooWide,
  fanShort,
  smallerMain,
  meterArea,
  seatSide,
  plasticPipe,
  tightElbow,
  longHose,
  unsure,
  notes,
];

/** Everything that an experienced person would see in a book. */
export const findingsIn = (seen: Seen): Finding[] => rules.flatMap((rule) => rule(seen));
