import { guide as claim } from "./claims/claim";
import { guide as airflow } from "./duct/airflow";
import { guide as area } from "./duct/area";
import { guide as convertunit } from "./duct/convertunit";
import { guide as density } from "./duct/density";
import { guide as diameter } from "./duct/diameter";
import { guide as equivdiameter } from "./duct/equivdiameter";
import { guide as tradesize } from "./duct/tradesize";
import { guide as velocity } from "./duct/velocity";
import { guide as airpower } from "./fan/airpower";
import { guide as fancurve } from "./fan/fancurve";
import { guide as fanlaw } from "./fan/fanlaw";
import { guide as fanpressure } from "./fan/fanpressure";
import { guide as operatingpoint } from "./fan/operatingpoint";
import type { Guide, Task } from "./guide";
import { guide as hoodairflow } from "./hoods/hoodairflow";
import { guide as hoodsuction } from "./hoods/hoodsuction";
import { guide as gateleak } from "./leaks/gateleak";
import { guide as leak } from "./leaks/leak";
import { guide as leakarea } from "./leaks/leakarea";
import { guide as leakat } from "./leaks/leakat";
import { guide as seamleak } from "./leaks/seamleak";
import { guide as about } from "./lookingUp/about";
import { guide as cautions } from "./lookingUp/cautions";
import { guide as reference } from "./lookingUp/reference";
import { guide as deviceloss } from "./losses/deviceloss";
import { guide as equivlength } from "./losses/equivlength";
import { guide as fittingloss } from "./losses/fittingloss";
import { guide as friction } from "./losses/friction";
import { guide as junctionloss } from "./losses/junctionloss";
import { guide as losscoefficient } from "./losses/losscoefficient";
import { guide as reynolds } from "./losses/reynolds";
import { guide as runloss } from "./losses/runloss";
import { guide as velocitypressure } from "./losses/velocitypressure";
import { guide as airflowerror } from "./measuring/airflowerror";
import { guide as correctedreading } from "./measuring/correctedreading";
import { guide as difference } from "./measuring/difference";
import { guide as pitotvelocity } from "./measuring/pitotvelocity";
import { guide as traverse } from "./measuring/traverse";
import { guide as traversepoints } from "./measuring/traversepoints";
import { guide as budget } from "./systems/budget";
import { guide as budgetuncertainty } from "./systems/budgetuncertainty";
import { guide as calibrate } from "./systems/calibrate";
import { guide as calibratedcurve } from "./systems/calibratedcurve";
import { guide as calibratedruns } from "./systems/calibratedruns";
import { guide as calibrateduncertainty } from "./systems/calibrateduncertainty";
import { guide as gains } from "./systems/gains";
import { guide as gainuncertainty } from "./systems/gainuncertainty";
import { guide as leakgains } from "./systems/leakgains";
import { guide as scenarios } from "./systems/scenarios";
import { guide as sizes } from "./systems/sizes";
import { guide as solve } from "./systems/solve";
import { guide as together } from "./systems/together";
import { guide as uncertainty } from "./systems/uncertainty";

/** Every function, by what one wants to do, in the order in which the pane and the help show them. */
export const tasks: readonly Task[] = [
  task("Velocity and size", {
    AREA: area,
    VELOCITY: velocity,
    AIRFLOW: airflow,
    DIAMETER: diameter,
    TRADESIZE: tradesize,
    EQUIVDIAMETER: equivdiameter,
    DENSITY: density,
    CONVERTUNIT: convertunit,
  }),
  task("Friction and losses", {
    VELOCITYPRESSURE: velocitypressure,
    FRICTION: friction,
    RUNLOSS: runloss,
    LOSSCOEFFICIENT: losscoefficient,
    FITTINGLOSS: fittingloss,
    JUNCTIONLOSS: junctionloss,
    EQUIVLENGTH: equivlength,
    DEVICELOSS: deviceloss,
    REYNOLDS: reynolds,
  }),
  task("Hoods", { HOODSUCTION: hoodsuction, HOODAIRFLOW: hoodairflow }),
  task("Leaks", { LEAK: leak, LEAKAREA: leakarea, LEAKAT: leakat, GATELEAK: gateleak, SEAMLEAK: seamleak }),
  task("Fan", {
    FANPRESSURE: fanpressure,
    OPERATINGPOINT: operatingpoint,
    FANLAW: fanlaw,
    AIRPOWER: airpower,
    FANCURVE: fancurve,
  }),
  task("Measuring", {
    PITOTVELOCITY: pitotvelocity,
    TRAVERSEPOINTS: traversepoints,
    TRAVERSE: traverse,
    AIRFLOWERROR: airflowerror,
    CORRECTEDREADING: correctedreading,
    DIFFERENCE: difference,
  }),
  task("Vendor numbers", { CLAIM: claim }),
  task("Whole tables", {
    BUDGET: budget,
    SOLVE: solve,
    SCENARIOS: scenarios,
    TOGETHER: together,
    GAINS: gains,
    LEAKGAINS: leakgains,
    SIZES: sizes,
    UNCERTAINTY: uncertainty,
    BUDGETUNCERTAINTY: budgetuncertainty,
    GAINUNCERTAINTY: gainuncertainty,
    CALIBRATE: calibrate,
    CALIBRATEDRUNS: calibratedruns,
    CALIBRATEDCURVE: calibratedcurve,
    CALIBRATEDUNCERTAINTY: calibrateduncertainty,
  }),
  task("Looking up", { REFERENCE: reference, CAUTIONS: cautions, ABOUT: about }),
];

function task(title: string, guides: Readonly<Record<string, Guide>>): Task {
  return { title, functions: Object.entries(guides).map(([name, guide]) => ({ name, ...guide })) };
}
