// All tests of a part as one file: what they import is loaded once, not once for each file. For the fast loop (jest.unit.config.js), and for
// `npm run mutate`, which loads it for each change.
const path = require("node:path");

for (const file of testsTogether) {
  describe(file, () => {
    afterAll(() => jest.restoreAllMocks()); // what one file spies on, the next finds as it was
    require(path.join(__dirname, "..", file));
  });
}
