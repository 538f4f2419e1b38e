import { byReason } from "../../../src/taskpane/check/byReason";
import type { Finding } from "../../../src/taskpane/check/finding";

const finding = (rule: string, why: string, at: string): Finding => ({
  rule,
  what: `${rule} at ${at}`,
  why,
  source: "a book",
  sheet: "Runs",
  at,
});

test("findings of one kind and reason come together where their reason comes up first, and none is lost", () => {
  const [one, two, three, four] = [
    finding("slow", "dust drops", "A1"),
    finding("tight", "it costs air", "A2"),
    finding("slow", "dust drops", "A3"),
    finding("slow", "another reason", "A4"),
  ];
  expect(byReason([one, two, three, four])).toEqual([
    { rule: "slow", why: "dust drops", source: "a book", findings: [one, three] },
    { rule: "tight", why: "it costs air", source: "a book", findings: [two] },
    { rule: "slow", why: "another reason", source: "a book", findings: [four] },
  ]);
  expect(byReason([])).toEqual([]);
});
