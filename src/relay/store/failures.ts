/** What a store refuses with. The server answers all but the third with 503; after the second its process ends. */

/** Nothing more can be stored for now: the disk is full, or nearly. What is stored goes on being sent. */
export class StoreFull extends Error {
  override readonly name = 'StoreFull';
}

/**
 * The disk failed under the file. What was written last may not be there although it was said to be, so nothing is taken any
 * more: the process has to end, and to be started again by whoever looked at the disk.
 */
export class StoreBroken extends Error {
  override readonly name = 'StoreBroken';
}

/** It can't be opened as it is. The message is one line that names the file and what to do. */
export class StoreUnusable extends Error {
  override readonly name = 'StoreUnusable';
}

/**
 * The store can't be reached for now, and nothing of what was asked was done, or it isn't known whether it was. It comes back
 * by itself: what was asked may be asked again.
 */
export class StoreAway extends Error {
  override readonly name = 'StoreAway';
}
