import { cautionsFile } from "../../src/taskpane/help/files";
import { cautions } from "../../src/reference/cautions";
import { titleWithBasis } from "../../src/reference/citation";
import { sources } from "../../src/reference/sources";
import { escaped, type HelpPage, section } from "./html";

export function cautionsPage(): HelpPage {
  const topics = [...new Set(cautions.map(({ topic }) => topic))];
  return {
    file: cautionsFile,
    title: "Cautions",
    lead: "Before you reach into a gate, a duct or a fan, and before you rely on a number.",
    body: topics
      .map((topic) =>
        section(
          topic.charAt(0).toUpperCase() + topic.slice(1),
          `<ul>${cautions
            .filter((row) => row.topic === topic)
            .map(
              (row) =>
                `<li>${escaped(row.text)} <small>${escaped(titleWithBasis(sources[row.source].title, row.basis))}</small></li>`,
            )
            .join("")}</ul>`,
        ),
      )
      .join("\n"),
  };
}
