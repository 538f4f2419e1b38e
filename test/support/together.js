// All tests of a part as one file, for `npm run mutate`: loaded once for each change, not once for each file and change.
const path = require("node:path");

for (const file of testsTogether) {
  describe(file, () => {
    require(path.join(__dirname, "..", file));
  });
}
