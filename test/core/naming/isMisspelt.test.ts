import { isMisspelt } from "../../../src/core/naming/isMisspelt";

test.each([
  ["length", "length"],
  ["lengths", "length"],
  ["lengt", "length"], // one letter less
  ["lengthh", "length"], // one more
  ["lemgth", "length"], // another
  ["lenght", "length"], // two changed about
  ["gaet", "gate"], // so in a short word
  ["gate:", "gate"],
])("%s is meant as %s", (typed, wanted) => expect(isMisspelt(typed, wanted)).toBe(true));

test.each([
  ["gale", "gate"], // another word
  ["lathe", "length"],
  ["width", "length"],
  ["hod", "hood"],
  ["leak notes", "leak"],
  ["", "to"],
])("%s is not meant as %s", (typed, wanted) => expect(isMisspelt(typed, wanted)).toBe(false));
