import { laterNoteWords } from "../reference/laterNoteWords";
import { noteWords } from "../reference/noteWords";

/** The notes came with functions.js, without those that only later functions say. This stands before all else in the file that says them. */
Object.assign(noteWords, laterNoteWords);
