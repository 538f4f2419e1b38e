import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { CellValue } from "../../src/sheets/workbook";
import { soffice } from "./soffice";

/** What a person does to a sheet in LibreOffice. Ranges and cells are addresses; `to` is the first cell of where it goes. */
export type Edit = { readonly sheet: string } & (
  | { readonly does: "insert row" | "delete row"; readonly row: number }
  | { readonly does: "cut" | "copy"; readonly range: string; readonly to: string }
  | { readonly does: "clear"; readonly range: string }
  | { readonly does: "sort"; readonly range: string; readonly by: number; readonly rising: boolean } // by: column within, from 0
  | { readonly does: "type"; readonly at: string; readonly value: CellValue }
  | { readonly does: "enter"; readonly at: string; readonly formula: string }
  | { readonly does: "compute all" } // as Ctrl+Shift+F9 does
  | { readonly does: "open anew" } // all that was done is forgotten
);

/** What a range shows. */
export interface Look {
  readonly sheet: string;
  readonly range: string;
}

export type Seen = readonly (readonly (string | number)[])[];

/**
 * Opens a workbook once and edits it step by step; after each step it is computed and looked at.
 * @param asItShows looks at what the edits alone bring on the screen, without computing everything
 * @returns for each step what each look saw; an error begins with "#"
 */
export function editsInOffice(
  bytes: Uint8Array,
  steps: readonly (readonly Edit[])[],
  looks: readonly Look[],
  asItShows = false,
): Seen[][] {
  const folder = mkdtempSync(path.join(os.tmpdir(), "edits-"));
  try {
    const inFolder = (name: string): string => path.join(folder, name);
    soffice(folder, "--terminate_after_init"); // makes the profile, into which the macro goes
    const library = path.join(folder, "profile", "user", "basic", "Standard");
    mkdirSync(library, { recursive: true });
    writeFileSync(path.join(library, "Edits.xba"), MODULE);
    writeFileSync(path.join(library, "script.xlb"), LIBRARY);
    writeFileSync(inFolder("book.xlsx"), bytes);
    const lines = [...looks.map(({ sheet, range }) => ["look", sheet, range]), ...steps.flatMap((step) => [...step.map(lineOf), ...(asItShows ? [] : [["compute all", ""]]), ["show"]])]; // prettier-ignore
    writeFileSync(inFolder("edits.txt"), lines.map((line) => `${line.join("\t")}\n`).join(""));
    soffice(folder, "--norestore", `macro:///Standard.Edits.Main("${folder}")`);
    return seenIn(readFileSync(inFolder("seen.txt"), "utf8"), looks.length);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function lineOf(edit: Edit): string[] {
  const begin = [edit.does, edit.sheet];
  switch (edit.does) {
    case "compute all":
    case "open anew":
      return begin;
    case "insert row":
    case "delete row":
      return [...begin, String(edit.row)];
    case "cut":
    case "copy":
      return [...begin, edit.range, edit.to];
    case "clear":
      return [...begin, edit.range];
    case "sort":
      return [...begin, edit.range, String(edit.by), edit.rising ? "rising" : "falling"];
    case "enter":
      return [...begin, edit.at, edit.formula];
    case "type":
      return [...begin, edit.at, typeof edit.value === "number" ? "number" : "text", String(edit.value ?? "")];
  }
}

function seenIn(text: string, looks: number): Seen[][] {
  const [failed] = /^failed.*$/m.exec(text) ?? [];
  if (failed !== undefined) throw new Error(failed);
  const shows = text.split("show\n").slice(1);
  return shows.map((show) => {
    const parts = show.split("look\n").slice(1);
    if (parts.length !== looks) throw new Error(`${parts.length} looks were taken, not ${looks}`);
    return parts.map((part) =>
      part
        .split("\n")
        .slice(0, -1)
        .map((line) => line.split("\t").slice(0, -1).map(valueOf)),
    );
  });
}

const valueOf = (cell: string): string | number => (cell.startsWith("n") ? Number(cell.slice(1)) : cell.slice(1));

const LIBRARY = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false">
 <library:element library:name="Edits"/>
</library:library>`;

/** LibreOffice's own Basic, which is there wherever it is; its bridge to Python often is not. */
const BASIC = `
Dim document, looks(99), lookCount, place

Sub Main(folder)
  Dim out, edits, line
  place = folder
  out = FreeFile
  Open folder & "/seen.txt" For Output As #out
  On Error GoTo Failed
  OpenBook()
  lookCount = 0
  edits = FreeFile
  Open folder & "/edits.txt" For Input As #edits
  Do While Not EOF(edits)
    Line Input #edits, line
    If line = "show" Then
      Print #out, "show" & Chr(10);
      ShowAll(out)
    ElseIf line <> "" Then
      Carry(Split(line, Chr(9)))
    End If
  Loop
  Close #edits
  document.close(True)
  Close #out
  StarDesktop.terminate()
  Exit Sub
Failed:
  Print #out, "failed: " & Error$ & " at " & line & Chr(10);
  Close #out
  StarDesktop.terminate()
End Sub

Sub OpenBook()
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  document = StarDesktop.loadComponentFromURL(ConvertToURL(place & "/book.xlsx"), "_blank", 0, hidden())
End Sub

Sub Carry(words)
  Dim sheet, range, target, more
  If words(0) = "look" Then
    looks(lookCount) = Array(words(1), words(2))
    lookCount = lookCount + 1
    Exit Sub
  End If
  If words(0) = "compute all" Then
    document.calculateAll()
    Exit Sub
  End If
  If words(0) = "open anew" Then
    document.close(True)
    OpenBook()
    Exit Sub
  End If
  sheet = document.Sheets.getByName(words(1))
  If words(0) = "insert row" Then sheet.Rows.insertByIndex(CLng(words(2)) - 1, 1)
  If words(0) = "delete row" Then sheet.Rows.removeByIndex(CLng(words(2)) - 1, 1)
  If words(0) = "insert row" Or words(0) = "delete row" Then Exit Sub
  range = sheet.getCellRangeByName(words(2))
  Select Case words(0)
    Case "cut"
      sheet.moveRange(sheet.getCellRangeByName(words(3)).getCellByPosition(0, 0).CellAddress, range.RangeAddress)
    Case "copy"
      sheet.copyRange(sheet.getCellRangeByName(words(3)).getCellByPosition(0, 0).CellAddress, range.RangeAddress)
    Case "clear"
      range.clearContents(23)
    Case "sort"
      SortBy(range, CLng(words(3)), words(4) = "rising")
    Case "enter"
      range.getCellByPosition(0, 0).setFormula(words(3))
    Case "type"
      If words(3) = "number" Then range.getCellByPosition(0, 0).setValue(Val(words(4))) Else range.getCellByPosition(0, 0).setString(words(4))
  End Select
End Sub

Sub SortBy(range, column, rising)
  Dim fields(0) As New com.sun.star.table.TableSortField
  Dim how(1) As New com.sun.star.beans.PropertyValue
  fields(0).Field = column
  fields(0).IsAscending = rising
  how(0).Name = "SortFields"
  how(0).Value = fields()
  how(1).Name = "ContainsHeader"
  how(1).Value = False
  range.sort(how())
End Sub

Sub ShowAll(out)
  Dim look, range, row, column, text
  For look = 0 To lookCount - 1
    Print #out, "look" & Chr(10);
    range = document.Sheets.getByName(looks(look)(0)).getCellRangeByName(looks(look)(1))
    For row = 0 To range.Rows.Count - 1
      text = ""
      For column = 0 To range.Columns.Count - 1
        text = text & Shown(range.getCellByPosition(column, row)) & Chr(9)
      Next column
      Print #out, text & Chr(10);
    Next row
  Next look
End Sub

Function Shown(cell)
  Dim kind
  kind = cell.Type
  If kind = com.sun.star.table.CellContentType.FORMULA Then kind = cell.FormulaResultType2
  If cell.getError() <> 0 Then
    Shown = "t#" & cell.getError()
  ElseIf cell.Type = com.sun.star.table.CellContentType.FORMULA Then
    If kind = com.sun.star.sheet.FormulaResult.VALUE Then Shown = "n" & Trim(Str(cell.getValue())) Else Shown = "t" & cell.getString()
  ElseIf kind = com.sun.star.table.CellContentType.VALUE Then
    Shown = "n" & Trim(Str(cell.getValue()))
  Else
    Shown = "t" & cell.getString()
  End If
End Function
`;

const MODULE = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Edits" script:language="StarBasic">
${BASIC.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;")}
</script:module>`;
