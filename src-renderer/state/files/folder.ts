/** As many as come in together. */
export const MOST_BAGS = 500;

/** A file with its place, which begins with the name of the folder that was chosen: "club/juniors/kay.json". */
type Placed = { webkitRelativePath: string };

/** `name` is that of the folder; bag files are named by their place within it, and so is what is left aside. */
export type Folder<F> = { name: string; bags: { file: F; name: string }[]; aside: string[] };

/**
 * What of a folder is taken in: bag files by their ending, in order of their names. The others are left aside, hidden
 * ones too, and what is beyond the most.
 */
export function folderOf<F extends Placed>(files: readonly F[]): Folder<F> {
  const placed = files
    .map((file) => ({ file, path: file.webkitRelativePath }))
    .sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0))
    .map(({ file, path }) => ({ file, name: path.slice(path.indexOf('/') + 1) }));
  const found = placed.filter(({ name }) => /\.json$/i.test(name) && !/(?:^|\/)\./.test(name));
  const bags = found.slice(0, MOST_BAGS);
  return {
    name: files[0]?.webkitRelativePath.split('/')[0] ?? '',
    bags,
    aside: placed.filter((one) => !bags.includes(one)).map(({ name }) => name),
  };
}
