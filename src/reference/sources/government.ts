import type { Source } from "./source";

const government = (title: string, year: string): Source => ({
  title,
  year,
  kind: "government",
  terms: "government publication",
});

/** Laws, rules and publications of public authorities. */
export const governments = {
  abCode: government("Alberta Occupational Health and Safety Code, Schedule 1, Table 2 (Reg. 191/2021)", "2021"),
  asbestosMemory: government(
    "Control of Asbestos Regulations 2012 (United Kingdom) and 29 CFR 1926.1101 (OSHA), from memory",
    "2012",
  ),
  bcGuideline: government("British Columbia OHS guidelines, part 5, guideline G5.48-6", "undated"),
  caTitle8: government("California Code of Regulations, title 8, section 5152, Table V-5", "undated"),
  chicagoCode: government("Chicago fire code, woodworking machinery, version of 14 September 2021", "2021"),
  dguv209044: government(
    "DGUV Information 209-044, Holzstaub (German social accident insurance), earlier text",
    "undated",
  ),
  dguv209044of2019: government("DGUV Information 209-044, Holzstaub (German social accident insurance)", "2019"),
  eh40: government("HSE EH40/2005 Workplace exposure limits, 4th ed.", "2020"),
  epaCostManualMemory: government(
    "EPA Air Pollution Control Cost Manual, 6th ed., section 6 chapter 1, from memory",
    "2002",
  ),
  epaCourse412: government("EPA APTI course SI:412B, lesson 7, Table 7-1", "1995"),
  epaCourse412Memory: government("EPA APTI course 412, baghouses, from memory", "1995"),
  epaMethod1Memory: government(
    "40 CFR 60, Appendix A, Method 1 (EPA), positions of traverse points, from memory",
    "undated",
  ),
  euDirective2017: government("Directive (EU) 2017/2398, limit of hardwood dust, read in two secondary pages", "2017"),
  epaCombustion2009: government(
    "EPA, Preventing problems with combustion equipment (web page, archived copy of 30 January 2009)",
    "2009",
  ),
  epaLead1997: government("EPA 747-K-97-001, Reducing lead hazards when remodeling your home, first pages", "1997"),
  hseWis23: government("HSE Woodworking Information Sheet 23 (revision 1), wood dust, read in a copy", "undated"),
  hseWis32: government(
    "HSE Woodworking Information Sheet 32, safe collection of wood waste, read in a copy",
    "undated",
  ),
  hsg258Memory: government("HSE HSG258, Controlling airborne contaminants at work, 2nd ed., from memory", "2011"),
  hsg33: government("HSE HSG33, Health and safety in roof work, 4th ed., preface read in a copy", "2012"),
  iarc62: government("IARC Monographs, volume 62, Wood dust and formaldehyde", "1995"),
  iarc100c: government("IARC Monographs, volume 100C, Arsenic, metals, fibres and dusts", "2012"),
  nioshControls: government("NIOSH hazard control sheets HC4, HC9 and HC10 (DHHS 96-121, 96-126, 96-127)", "1996"),
  nioshPel88: government("NIOSH, 1988 OSHA PEL project, wood dust, cdc.gov/niosh/pel88/wooddust.html", "1989"),
  nioshSanderAbstract: government("NIOSH authors, abstract on controlling a rotational hand sander", "undated"),
  nioshMemory: government("NIOSH recommended limit and United Kingdom noise regulations, from memory", "undated"),
  nrcanHeat: government(
    "Natural Resources Canada, Keeping the Heat In, operating your house, read in a copy",
    "undated",
  ),
  ohioExhaust: government(
    "Ohio Administrative Code 4123:1-5-18, control of air contaminants, digest read in a copy",
    "2016",
  ),
  ontario833: government("Ontario Regulation 833, version of 2015 to 2016", "2016"),
  osha1910_107Memory: government("29 CFR 1910.107, spray finishing (OSHA), from memory", "undated"),
  osha1910_94: government("29 CFR 1910.94(b)(3), Tables G-4 to G-7 (OSHA)", "undated"),
  oshaAirLetter1994: government(
    "OSHA letter of interpretation of 14 January 1994 on 29 CFR 1910.242(b), compressed air",
    "1994",
  ),
  oshaBulletin1997: government("OSHA Hazard Information Bulletin of 2 May 1997, indoor cyclone collectors", "1997"),
  oshaDirective2008: government("OSHA directive CPL 03-00-008, combustible dust, table of explosion classes", "2008"),
  oshaMemory: government("29 CFR 1910.147 and 1910.95 (OSHA), from memory", "undated"),
  oshaSampling2012: government("OSHA Chemical Sampling Information, wood dust (archived copy of 2012)", "2012"),
  oshaSltc2012: government("OSHA safety and health topics, wood dust evaluation page", "2012"),
  oshaWoodEtool: government("OSHA woodworking eTool, wood dust page, read in a copy", "undated"),
  quebecRegulation: government("Quebec, regulation S-2.1 r.13, section 59.1, version of 18 November 2024", "2024"),
  safeWorkAustralia: government(
    "Safe Work Australia, workplace exposure standards for airborne contaminants and their transition",
    "2024 to 2026",
  ),
  safeWorkMemory: government(
    "Safe Work Australia, workplace exposure standards before December 2026, from memory",
    "undated",
  ),
  suvaWoodDust: government("Suva (Swiss accident insurance), page on wood dust", "undated"),
  ufc3410: government("UFC 3-410-04N, Industrial Ventilation (US Department of Defense), 25 October 2004", "2004"),
} as const satisfies Record<string, Source>;
