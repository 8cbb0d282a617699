import type { CDPSession, Page } from 'playwright-core';

/** A node of the tree that a screen reader is given. */
export interface TreeNode {
  role: string;
  name: string;
  description: string;
  /** Of it what is said of states: checked, expanded, invalid, focused, focusable, live. */
  states: Readonly<Record<string, unknown>>;
}

interface RawNode {
  nodeId: string;
  ignored: boolean;
  role?: { value?: string };
  name?: { value?: string };
  description?: { value?: string };
  properties?: { name: string; value: { value?: unknown } }[];
  childIds?: string[];
}

const toNode = ({ role, name, description, properties = [] }: RawNode): TreeNode => ({
  role: role?.value ?? '', name: name?.value?.trim() ?? '', description: description?.value ?? '',
  states: Object.fromEntries(properties.map((property) => [property.name, property.value.value])),
});

/** Reads the accessibility tree of a page in its own order, without what is not told. */
export async function treeReader(page: Page): Promise<() => Promise<TreeNode[]>> {
  const session: CDPSession = await page.context().newCDPSession(page);
  await session.send('Accessibility.enable');
  return async () => {
    const nodes = (await session.send('Accessibility.getFullAXTree')).nodes as unknown as RawNode[];
    const byId = new Map(nodes.map((node) => [node.nodeId, node]));
    const inOrder = (node: RawNode | undefined): RawNode[] => (node ? [node, ...(node.childIds ?? []).flatMap((id) => inOrder(byId.get(id)))] : []);
    return inOrder(nodes[0]).filter(({ ignored }) => !ignored).map(toNode);
  };
}
