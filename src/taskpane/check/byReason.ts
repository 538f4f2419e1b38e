import type { Finding } from "./finding";

/** Findings of one kind with one reason, so that the reason is read once. */
export interface FindingGroup {
  readonly rule: string;
  readonly why: string;
  readonly source: string;
  readonly findings: readonly Finding[];
}

/** Groups findings in the order in which their reasons come up first. */
export function byReason(findings: readonly Finding[]): FindingGroup[] {
  const groups = new Map<string, FindingGroup & { findings: Finding[] }>();
  for (const finding of findings) {
    const { rule, why, source } = finding;
    const key = JSON.stringify([rule, why, source]);
    const group = groups.get(key) ?? { rule, why, source, findings: [] };
    group.findings.push(finding);
    groups.set(key, group);
  }
  return [...groups.values()];
}
