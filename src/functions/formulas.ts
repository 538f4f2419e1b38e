/** Formulas that stand on several pages of the help, in TeX. */
export const LAMINAR = "f = \\frac{64}{\\mathrm{Re}} \\quad (\\mathrm{Re} \\le 2000)";
export const COLEBROOK =
  "\\frac{1}{\\sqrt f} = -2\\log_{10}\\!\\left(\\frac{e/D}{3.7} + \\frac{2.51}{\\mathrm{Re}\\sqrt f}\\right) \\quad (\\mathrm{Re} \\ge 4000)";

export const ALONG_A_RUN =
  "P_\\text{down} = P_\\text{up} + \\Delta p_\\text{friction}(Q) + \\sum K\\,p_v(Q) + \\Delta p_\\text{device}(Q) + \\Delta p_\\text{junction}";
export const AT_A_HOOD = "P_\\text{up} = K_h\\,p_v(Q - Q_\\text{leak}) \\quad\\text{at an open hood}";
export const AT_A_LEAK =
  "Q_\\text{leak} = C_d A \\sqrt{2\\,(P_\\text{up} + p_v)/\\rho}, \\qquad Q_\\text{run} = \\sum Q_\\text{joining} + Q_\\text{leak}";
