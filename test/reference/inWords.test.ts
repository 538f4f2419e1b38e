import { inWords } from "../../src/reference/inWords";

test.each([
  [0.47194745, "airflow", "IP", "1000 cfm"], // 1 cfm = 0.00047194745 m3/s
  [0.047194745, "airflow", "IP", "100 cfm"],
  [0.0470531, "airflow", "IP", "99.7 cfm"],
  [20, "velocity", "SI", "20 m/s"],
  [20, "velocity", "IP", "3937 fpm"],
  [1.23456, "pressure", "SI", "1.23 Pa"],
  [-0.5, "velocity", "SI", "-0.5 m/s"],
  [-2.54, "velocity", "IP", "-500 fpm"], // 1 fpm = 0.00508 m/s
  [0, "pressure", "IP", "0 in.w.g."],
] as const)("%p of %s in %s is %s", (value, quantity, system, words) =>
  expect(inWords(value, quantity, system)).toBe(words),
);
