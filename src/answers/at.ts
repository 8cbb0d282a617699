/** Reads and writes single answers by the path a field names, never changing a document in place. */
import { extras } from './questions.ts';
import type { AnswersDocument, TaskDocument, TaskId } from './schema.ts';

type Extra = keyof typeof extras;
type Tree = Record<string, unknown>;

const extraNames = Object.keys(extras) as Extra[];

/** What stands at a field's path; undefined where nothing was said. */
export function answerAt(answers: AnswersDocument, at: string): unknown {
  const { tasks, comfort } = answers;
  if (at === 'tasks') return tasks?.map(({ task }) => task);
  if (at === 'tasks.must') {
    const said = tasks?.filter(({ must }) => must !== undefined) ?? [];
    return said.length > 0 ? said.filter(({ must }) => must).map(({ task }) => task) : undefined;
  }
  if (at === 'comfort.extras') {
    const said = extraNames.filter((name) => comfort?.[name] !== undefined);
    return said.length > 0 ? said.filter((name) => comfort?.[name] === extras[name]) : undefined;
  }
  const [room, ...rest] = at.split('.');
  if (room === 'tasks') return (tasks?.find(({ task }) => task === rest[0]) as Tree | undefined)?.[rest[1]!];
  return rest.reduce<unknown>((value, key) => (value as Tree | undefined)?.[key], (answers as Tree)[room!]);
}

const without = (tree: Tree, key: string) => Object.fromEntries(Object.entries(tree).filter(([name]) => name !== key));

/** A tree with a value put at a path, or taken away where the value is undefined; empty branches go. */
function put(tree: Tree, [key, ...rest]: readonly string[], value: unknown): Tree {
  if (key === undefined) return tree;
  const inner = rest.length > 0 ? put((tree[key] ?? {}) as Tree, rest, value) : value;
  const empty = inner === undefined || (rest.length > 0 && Object.keys(inner as Tree).length === 0);
  return empty ? without(tree, key) : { ...tree, [key]: inner };
}

function withTasks(answers: AnswersDocument, chosen: readonly string[] | undefined): AnswersDocument {
  const tasks = chosen?.map((task) => answers.tasks?.find((each) => each.task === task) ?? ({ task } as TaskDocument));
  return put(answers as unknown as Tree, ['tasks'], tasks) as unknown as AnswersDocument;
}

const mapTasks = (answers: AnswersDocument, change: (task: TaskDocument) => TaskDocument): AnswersDocument =>
  answers.tasks ? { ...answers, tasks: answers.tasks.map(change) } : answers;

/** A copy of the answers with one of them given, or taken back where the value is undefined. */
export function withAnswer(answers: AnswersDocument, at: string, value: unknown): AnswersDocument {
  if (at === 'tasks') return withTasks(answers, value as TaskId[] | undefined);
  if (at === 'tasks.must') {
    const must = value as readonly string[] | undefined;
    return mapTasks(answers, (task) => put(task as Tree, ['must'], must?.includes(task.task)) as TaskDocument);
  }
  if (at === 'comfort.extras') {
    const chosen = value as readonly string[] | undefined;
    // Said not to matter is an answer too; left unsaid is not.
    const unwanted = { ...Object.fromEntries(extraNames.map((name) => [name, false])), loaderOff: 'rarely', exhaust: 'any' } as Record<Extra, unknown>;
    return extraNames.reduce(
      (all, name) => withAnswer(all, `comfort.${name}`, chosen && (chosen.includes(name) ? extras[name] : unwanted[name])),
      answers,
    );
  }
  const [room, ...rest] = at.split('.');
  if (room === 'tasks') {
    return mapTasks(answers, (task) => (task.task === rest[0] ? (put(task as Tree, rest.slice(1), value) as TaskDocument) : task));
  }
  return put(answers as unknown as Tree, [room!, ...rest], value) as unknown as AnswersDocument;
}

/** A copy of the answers with several of them given or taken back, by their paths. */
export const withAnswers = (answers: AnswersDocument, values: Readonly<Record<string, unknown>>): AnswersDocument =>
  Object.entries(values).reduce((all, [path, value]) => withAnswer(all, path, value), answers);
