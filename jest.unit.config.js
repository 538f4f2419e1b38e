// `npm run test:unit`: the quick tests alone. A configuration of its own, since words behind `--selectProjects` are names of suites.
const { projects, ...shared } = require("./jest.config.js");

module.exports = { ...shared, projects: projects.filter(({ displayName }) => displayName === "unit") };
