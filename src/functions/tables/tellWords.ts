import { rowsWithWords, type Words } from "../../reference/rowsWithWords";

/** The build's (scripts/wordsOfRows.ts): what rows say, each once, and which of them each row says. */
declare const WORDS_OF_ROWS: { readonly words: readonly Words[]; readonly places: readonly number[] };

/** The rows came with functions.js, without their words. This stands before all else in the file that shows them. */
const { words, places } = WORDS_OF_ROWS;
rowsWithWords().forEach((row, at) => Object.assign(row, words[places[at]!]));
