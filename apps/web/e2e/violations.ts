import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

async function found(axe: AxeBuilder): Promise<string[]> {
  const { violations: all } = await axe.analyze();
  return all.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary}`),
  );
}

/** What breaks WCAG 2.2 AA or the best practices of the rule set, a line each. */
export const violations = (page: Page): Promise<string[]> => found(new AxeBuilder({ page }));

/** The same, with the contrast of AAA. */
export const violationsAaa = (page: Page): Promise<string[]> =>
  found(new AxeBuilder({ page }).options({ rules: { 'color-contrast-enhanced': { enabled: true } } }));
