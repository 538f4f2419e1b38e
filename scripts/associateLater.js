// A loader of webpack for a function of the second file: what it calls CustomFunctions, to hand itself over, is ours instead of the host's.
module.exports = function associateLater(code) {
  return `${code}\nimport { CustomFunctions } from ${JSON.stringify(this.getOptions().from)};\n`;
};
