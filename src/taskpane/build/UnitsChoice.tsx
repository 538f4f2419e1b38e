import { Radio, RadioGroup } from "@fluentui/react-radio";
import type { ReactElement } from "react";
import type { UnitSystem } from "../../reference/quantities";
import { Choice } from "./Choice";

interface UnitsChoiceProps {
  readonly legend: string;
  readonly units: UnitSystem;
  readonly choose: (units: UnitSystem) => void;
}

/** The two unit systems, each with the units that one knows it by. */
export function UnitsChoice({ legend, units, choose }: UnitsChoiceProps): ReactElement {
  return (
    <Choice legend={legend}>
      <RadioGroup value={units} onChange={(_, { value }) => choose(value as UnitSystem)} aria-label={legend}>
        <Radio value="IP" label="Inch-pound: in, ft, cfm, fpm, in.w.g." />
        <Radio value="SI" label="SI: mm, m, m³/h, m/s, Pa" />
      </RadioGroup>
    </Choice>
  );
}
