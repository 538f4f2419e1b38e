import type { PublishedGroup } from "../row";
import { coefficientRow, type PrintedCoefficient } from "./coefficientRow";
import { titles } from "./titles";

const witheridge = "Witheridge, in Patty (ed.), Industrial Hygiene (about 1963), Fig 19, read in a scan";
const osha = "29 CFR 1910.94(b)(3), notes to Tables G-4 to G-7 (OSHA)";
const ashrae2021 = "ASHRAE Handbook Fundamentals 2021, chapter 21, fitting ER2-1, one sample row";
const ashrae1977 = "ASHRAE Handbook Fundamentals 1977, p 32.31, and Idelchik 1989, p 52 (second-hand)";
const pocket = "ASHRAE Pocket Guide 2013, p 319, Table 9-4";

/** Id, the text as a person types it, the coefficient as printed, the source. */
const printed: readonly PrintedCoefficient[] = [
  ["H01", "plain end older", "0.9", witheridge],
  ["H02", "flanged end", "0.5", witheridge],
  ["H03", "grinder hood", "0.65", osha],
  ["H04", "grinder hood tapered", "0.45", osha],
  ["H06", "bell mouth 0.21", "0.03", ashrae2021],
  ["H07", "bell mouth 0", "0.5", ashrae1977],
  ["H08", "bell mouth 0.01", "0.44", ashrae1977],
  ["H09", "bell mouth 0.02", "0.37", ashrae1977],
  ["H10", "bell mouth 0.03", "0.31", ashrae1977],
  ["H11", "bell mouth 0.04", "0.26", ashrae1977],
  ["H12", "bell mouth 0.05", "0.22", ashrae1977],
  ["H13", "bell mouth 0.06", "0.2", ashrae1977],
  ["H14", "bell mouth 0.08", "0.15", ashrae1977],
  ["H15", "bell mouth 0.1", "0.12", ashrae1977],
  ["H16", "bell mouth 0.12", "0.09", ashrae1977],
  ["H17", "bell mouth 0.16", "0.06", ashrae1977],
  ["H18", "bell mouth 0.2", "0.03", ashrae1977],
  ["GH029", "duct end in wall 0", "0.5", pocket],
  ["GH030", "duct end in wall 0.002", "0.57", pocket],
  ["GH031", "duct end in wall 0.01", "0.68", pocket],
  ["GH033", "duct end in wall 0.2", "0.92", pocket],
  ["GH034", "duct end in wall 0.5", "1.0", pocket],
  ["GH035", "duct end in wall 1.0", "1.0", pocket],
  ["GH037", "duct end in wall medium 0.002", "0.51", pocket],
  ["GH038", "duct end in wall medium 0.01", "0.52", pocket],
  ["GH039", "duct end in wall medium 0.05", "0.55", pocket],
  ["GH041", "duct end in wall medium 0.5", "0.72", pocket],
  ["GH042", "duct end in wall medium 1.0", "0.72", pocket],
  ["GH043", "duct end in wall thick 0", "0.5", pocket],
  ["GH045", "duct end in wall thick 0.01", "0.5", pocket],
  ["GH046", "duct end in wall thick 0.05", "0.5", pocket],
  ["GH047", "duct end in wall thick 0.2", "0.5", pocket],
  ["GH049", "duct end in wall thick 1.0", "0.5", pocket],
  ["GH050", "bell mouth free 0", "1.0", pocket],
  ["GH051", "bell mouth free 0.01", "0.87", pocket],
  ["GH053", "bell mouth free 0.03", "0.61", pocket],
  ["GH054", "bell mouth free 0.04", "0.51", pocket],
  ["GH055", "bell mouth free 0.05", "0.4", pocket],
  ["GH057", "bell mouth free 0.08", "0.2", pocket],
  ["GH058", "bell mouth free 0.1", "0.15", pocket],
  ["GH059", "bell mouth free 0.12", "0.1", pocket],
  ["GH061", "bell mouth free 0.2", "0.03", pocket],
  ["GH169", "plain end", "0.93", titles.exam],
  ["GH170", "bell mouth single figure", "0.04", titles.exam],
];

export const hoodEntryRows: PublishedGroup = {
  title: "entry coefficients of pipe ends, bell mouths and hoods",
  rows: printed.map(coefficientRow),
};
