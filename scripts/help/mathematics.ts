/** The formula of each function, in the notation of mathematics, and what its letters stand for. Inside, all is SI. */
export interface Mathematics {
  readonly formulas: readonly string[]; // TeX
  readonly letters: Readonly<Record<string, string>>; // TeX to words, with the SI unit in brackets
}

const FLOW = { Q: "airflow [m³/s]" };
const WIDTH = { D: "inside diameter [m]" };
const SPEED = { V: "mean velocity [m/s]" };
const AIR = { "\\rho": "density of the air [kg/m³]" };
const VELOCITY_PRESSURE = { p_v: "velocity pressure [Pa]" };
const K = { K: "loss coefficient [-]" };
const SUCTION = { S: "static suction [Pa]" };
const OPENING = { A: "open area [m²]", C_d: "discharge coefficient [-]" };
const CURVE = { "p(Q)": "the fan's curve: fan static pressure [Pa] at an airflow" };

const friction: Mathematics = {
  formulas: [
    String.raw`\frac{\Delta p}{L} = \frac{f}{D}\,\tfrac12\rho V^2, \qquad \mathrm{Re} = \frac{\rho V D}{\mu}`,
    String.raw`f = \frac{64}{\mathrm{Re}} \quad (\mathrm{Re} \le 2000)`,
    String.raw`\frac{1}{\sqrt f} = -2\log_{10}\!\left(\frac{e/D}{3.7} + \frac{2.51}{\mathrm{Re}\sqrt f}\right) \quad (\mathrm{Re} \ge 4000)`,
  ],
  letters: {
    f: "Darcy friction factor [-]; between Re 2000 and 4000 it goes linearly from one value to the other",
    ...WIDTH,
    ...SPEED,
    ...AIR,
    "\\mu": "viscosity of air, 1.819e-5 Pa s",
    e: "roughness of the wall [m]",
    L: "length [m]",
  },
};

const network: Mathematics = {
  formulas: [
    String.raw`P_\text{down} = P_\text{up} + \Delta p_\text{friction}(Q) + \sum K\,p_v(Q) + \Delta p_\text{device}(Q)`,
    String.raw`P_\text{up} = K_h\,p_v(Q - Q_\text{leak}) \quad\text{at an open hood}`,
    String.raw`Q_\text{leak} = C_d A \sqrt{2\,(P_\text{up} + p_v)/\rho}, \qquad Q_\text{run} = \sum Q_\text{joining} + Q_\text{leak}`,
  ],
  letters: {
    P: "total pressure below the room's [Pa], at the run's upstream and downstream end",
    ...FLOW,
    ...VELOCITY_PRESSURE,
    ...K,
    K_h: "entry loss coefficient of the hood [-]",
    ...OPENING,
    ...AIR,
  },
};

export const mathematics: Readonly<Record<string, Mathematics>> = {
  AREA: {
    formulas: [String.raw`A = \frac{\pi}{4}D^2 \quad\text{or}\quad A = W H`],
    letters: { A: "cross-section [m²]", ...WIDTH, W: "width [m]", H: "height [m]" },
  },
  VELOCITY: { formulas: [String.raw`V = \frac{Q}{A}`], letters: { ...SPEED, ...FLOW, A: "cross-section [m²]" } },
  AIRFLOW: { formulas: [String.raw`Q = V A`], letters: { ...FLOW, ...SPEED, A: "cross-section [m²]" } },
  DIAMETER: {
    formulas: [String.raw`D = \sqrt{4Q/(\pi V)}`],
    letters: { ...WIDTH, ...FLOW, ...SPEED },
  },
  TRADESIZE: {
    formulas: [String.raw`D_\text{stock} = \max\{\,d \in \text{sizes} : d \le D\,\}`],
    letters: {
      ...WIDTH,
      d: "a size from the table of sizes; “up” takes the smallest that is not smaller, “nearest” the nearer one",
    },
  },
  EQUIVDIAMETER: {
    formulas: [String.raw`D_e = 1.30\,\frac{(WH)^{0.625}}{(W+H)^{0.25}}`],
    letters: { D_e: "equivalent round diameter [m]", W: "width [m]", H: "height [m]" },
  },
  DENSITY: {
    formulas: [
      String.raw`p = 101325\,(1 - 2.25577\times10^{-5}\,z)^{5.2559}`,
      String.raw`\rho = \frac{1+w}{v}, \qquad v = \frac{R_{da} T\,(1 + 1.607858\,w)}{p}, \qquad w = 0.621945\,\frac{\varphi p_{ws}}{p - \varphi p_{ws}}`,
    ],
    letters: {
      z: "height above sea level [m]",
      p: "pressure of the air [Pa]",
      w: "humidity ratio [kg/kg]",
      v: "volume for each kilogram of dry air [m³/kg]",
      "\\varphi": "relative humidity, 0 to 1",
      "p_{ws}": "saturation pressure of water at the air's temperature [Pa]",
      T: "absolute temperature [K]",
      "R_{da}": "gas constant of dry air, 287.042 J/(kg K)",
    },
  },
  VELOCITYPRESSURE: {
    formulas: [String.raw`p_v = \tfrac12\rho V^2`],
    letters: { ...VELOCITY_PRESSURE, ...AIR, ...SPEED },
  },
  PITOTVELOCITY: {
    formulas: [String.raw`V = \sqrt{2p_v/\rho}`],
    letters: { ...SPEED, ...VELOCITY_PRESSURE, ...AIR },
  },
  FRICTION: friction,
  RUNLOSS: {
    ...friction,
    formulas: [String.raw`\Delta p = L\,\frac{f}{D}\,\tfrac12\rho V^2`, ...friction.formulas.slice(1)],
  },
  LOSSCOEFFICIENT: {
    formulas: [String.raw`\Delta p = K\,p_v, \qquad K = K_1 + (K_2 - K_1)\frac{x - x_1}{x_2 - x_1}`],
    letters: {
      ...K,
      ...VELOCITY_PRESSURE,
      x: "shape or angle, between the printed points 1 and 2; outside them it is refused",
    },
  },
  FITTINGLOSS: {
    formulas: [String.raw`\Delta p = n \sum K \cdot \tfrac12\rho V^2`],
    letters: { n: "count [-]", ...K, ...AIR, ...SPEED },
  },
  EQUIVLENGTH: {
    formulas: [String.raw`L_e = \frac{K\,p_v}{\Delta p/L} = \frac{K D}{f}`],
    letters: {
      L_e: "length of straight duct [m]",
      ...K,
      ...VELOCITY_PRESSURE,
      ...WIDTH,
      f: "Darcy friction factor [-]",
    },
  },
  HOODSUCTION: {
    formulas: [String.raw`S_h = (1 + K_h)\,\tfrac12\rho V^2`],
    letters: { S_h: "static suction behind the hood [Pa]", K_h: "entry loss coefficient [-]", ...AIR, ...SPEED },
  },
  HOODAIRFLOW: {
    formulas: [String.raw`Q = A\,C_e\sqrt{2S_h/\rho}, \qquad C_e = \frac{1}{\sqrt{1+K_h}}`],
    letters: {
      ...FLOW,
      A: "cross-section of the duct [m²]",
      C_e: "coefficient of entry [-]",
      S_h: "static suction behind the hood [Pa]",
      K_h: "entry loss coefficient [-]",
      ...AIR,
    },
  },
  DEVICELOSS: {
    formulas: [String.raw`\Delta p = \Delta p_0\left(\frac{Q}{Q_0}\right)^m`],
    letters: {
      "\\Delta p_0": "loss at the rated airflow",
      Q_0: "rated airflow",
      Q: "airflow",
      m: "2 for a separator, 1 for a filter medium",
    },
  },
  LEAK: {
    formulas: [String.raw`Q = C_d A\sqrt{2S/\rho}`],
    letters: { ...FLOW, ...OPENING, ...SUCTION, ...AIR },
  },
  LEAKAREA: {
    formulas: [String.raw`A = \frac{Q}{C_d}\sqrt{\rho/(2S)}`],
    letters: { ...OPENING, ...FLOW, ...SUCTION, ...AIR },
  },
  LEAKAT: {
    formulas: [String.raw`Q_2 = Q_1\left(\frac{S_2}{S_1}\right)^n`],
    letters: {
      Q_1: "leak as measured",
      S_1: "suction while measuring",
      S_2: "the other suction",
      n: "0.5 for an opening, 0.65 for seams",
    },
  },
  GATELEAK: {
    formulas: [String.raw`Q = C_d A\sqrt{2S/\rho}, \qquad A = g \cdot (\ell/D) \cdot D`],
    letters: {
      ...FLOW,
      ...OPENING,
      ...SUCTION,
      ...AIR,
      g: "width of the gap [m], from the table",
      "\\ell/D": "length of the gap in diameters, from the table",
      ...WIDTH,
    },
  },
  SEAMLEAK: {
    formulas: [
      String.raw`Q = C_L\,\frac{A_s}{100}\,p^{0.65} \quad\text{(cfm, ft}^2\text{, in.w.g.)}`,
      String.raw`Q = c\,A_s\,p^{0.65} \quad\text{(L/s, m}^2\text{, Pa)}`,
    ],
    letters: {
      C_L: "leakage class",
      c: "coefficient of the EN letter",
      A_s: "surface of the duct",
      p: "pressure or suction in it",
    },
  },
  BUDGET: {
    formulas: [
      String.raw`P_\text{down} = P_\text{up} + \Delta p_\text{friction} + \sum K\,p_v + \Delta p_\text{device}`,
      String.raw`P_\text{up} = \max_\text{joining} P_\text{down}, \qquad Q_\text{balanced} = Q\sqrt{P_\text{governing}/P_\text{path}}`,
    ],
    letters: {
      P: "total pressure below the room's [Pa]",
      Q: "airflow that the path was asked for [m³/s]",
      ...VELOCITY_PRESSURE,
      ...K,
    },
  },
  FANPRESSURE: {
    formulas: [
      String.raw`p(Q) = h_{00}(t)\,p_i + h_{10}(t)\,h\,d_i + h_{01}(t)\,p_{i+1} + h_{11}(t)\,h\,d_{i+1}, \qquad t = \frac{Q - Q_i}{h}`,
    ],
    letters: {
      ...CURVE,
      p_i: "printed pressure at the airflow Q_i",
      h: "distance to the next printed airflow",
      d_i: "slope there, chosen so that the curve never overshoots (Fritsch and Carlson's monotone cubic)",
      "h_{00}": "and its fellows: the four cubic Hermite basis polynomials",
    },
  },
  OPERATINGPOINT: {
    formulas: [String.raw`p(Q) = p_\text{fixed} + (p_0 - p_\text{fixed})\left(\frac{Q}{Q_0}\right)^2`],
    letters: {
      ...CURVE,
      p_0: "pressure asked for at the design airflow Q_0",
      "p_\\text{fixed}": "part of it that does not change with airflow",
    },
  },
  FANLAW: {
    formulas: [String.raw`\frac{Q_2}{Q_1} = n\,d^3, \qquad \frac{p_2}{p_1} = n^2 d^2 r`],
    letters: { n: "speed ratio", d: "size ratio", r: "density ratio" },
  },
  AIRPOWER: {
    formulas: [String.raw`W = \frac{Q\,p}{\eta}`],
    letters: { W: "power [W]", ...FLOW, p: "pressure [Pa]", "\\eta": "efficiency; 1 gives the power in the air" },
  },
  SOLVE: {
    ...network,
    formulas: [...network.formulas, String.raw`p(Q_\text{fan}) = P_\text{down,last} + \Delta p_\text{discharge}`],
  },
  SCENARIOS: network,
  GAINS: {
    formulas: [String.raw`\Delta Q_\text{hood} = Q_\text{hood}(\text{one change}) - Q_\text{hood}(\text{as it is})`],
    letters: { "Q_\\text{hood}": "airflow at the hood, each time solved as its own network (see SOLVE)" },
  },
  TRAVERSEPOINTS: {
    formulas: [String.raw`x_i = D\,y_i`],
    letters: {
      x_i: "depth from the wall [m]",
      ...WIDTH,
      y_i: "published fraction of the diameter (or side), in the table",
    },
  },
  TRAVERSE: {
    formulas: [
      String.raw`\bar V = \frac1n\sum V_i \qquad\text{or}\qquad \bar V = \sqrt{2/\rho}\;\frac1n\sum\sqrt{p_{v,i}}`,
    ],
    letters: {
      n: "readings that are filled and above 0",
      V_i: "a velocity as read",
      "p_{v,i}": "a velocity pressure as read [Pa]",
      ...AIR,
    },
  },
  AIRFLOWERROR: {
    formulas: [String.raw`\delta Q = A\sqrt{(aV/100)^2 + b^2 + (2V\,\delta D/D)^2}`],
    letters: {
      A: "cross-section [m²]",
      a: "meter's ± percent of its reading",
      b: "meter's ± whatever it reads [m/s]",
      "\\delta D": "± of the diameter [m]",
      ...SPEED,
      ...WIDTH,
    },
  },
  CORRECTEDREADING: {
    formulas: [String.raw`Q_\text{true} = Q_\text{shown}\,\frac{A_\text{true}}{A_\text{entered}}`],
    letters: { "A_\\text{true}": "area where the probe stood", "A_\\text{entered}": "area that the meter was given" },
  },
  CLAIM: {
    formulas: [
      String.raw`\max_Q\,\bigl(Q\,p\bigr) = \tfrac14\,Q_\text{max}\,p_\text{max} \le W_\text{motor}, \qquad p_\text{max} \le \rho u^2, \qquad u = \pi d N`,
    ],
    letters: {
      "Q_\\text{max}": "claimed airflow [m³/s]",
      "p_\\text{max}": "claimed pressure [Pa]",
      "W_\\text{motor}": "power of the motor [W]",
      u: "speed of the impeller's tip [m/s]",
      d: "impeller diameter [m]",
      N: "revolutions a second [1/s]",
      ...AIR,
    },
  },
  CONVERTUNIT: {
    formulas: [String.raw`y = x\,\frac{k_\text{from}}{k_\text{to}}`],
    letters: { k: "SI value of one of the unit, in the table of units" },
  },
};

/** Functions that look up or list and so have no formula. */
export const withoutMathematics = ["REFERENCE", "CAUTIONS", "ABOUT"] as const;
