/*
 * Stands between a process and its disk (LD_PRELOAD), for the files of one store:
 *   ACRE_DISK_STORE  the store's file; its log (-wal) and marks (-marks) are watched with it
 *   ACRE_DISK_LOG    where all that was written is noted, in order: kind, file, offset, length, bytes
 *   ACRE_DISK_FAIL   a file; while it is there, what stands in it fails: "sync" (EIO) or "space" (ENOSPC)
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/syscall.h>
#include <unistd.h>

static pthread_mutex_t one = PTHREAD_MUTEX_INITIALIZER;

/* 1 the store, 2 its log, 3 the marks, 0 anything else */
static int watched(int fd) {
  const char *store = getenv("ACRE_DISK_STORE");
  if (!store) return 0;
  char link[64], path[4096];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  size_t stem = strlen(store);
  if (length < (ssize_t)stem || strncmp(path, store, stem) != 0) return 0;
  path[length] = 0;
  if (path[stem] == 0) return 1;
  if (strcmp(path + stem, "-wal") == 0) return 2;
  return strcmp(path + stem, "-marks") == 0 ? 3 : 0;
}

static int failing(char kind) {
  const char *file = getenv("ACRE_DISK_FAIL");
  if (!file) return 0;
  int fd = syscall(SYS_openat, AT_FDCWD, file, O_RDONLY);
  if (fd < 0) return 0;
  /* "sync" or "space": the second letter tells them apart */
  char said[2] = {0, 0};
  if (syscall(SYS_read, fd, said, 2) != 2) said[1] = 0;
  syscall(SYS_close, fd);
  return said[1] == kind;
}

static void note(char kind, int file, int64_t offset, const void *bytes, int64_t length) {
  const char *log = getenv("ACRE_DISK_LOG");
  if (!log) return;
  pthread_mutex_lock(&one);
  int fd = syscall(SYS_openat, AT_FDCWD, log, O_WRONLY | O_APPEND | O_CREAT, 0600);
  char head[18];
  head[0] = kind;
  head[1] = (char)file;
  memcpy(head + 2, &offset, 8);
  memcpy(head + 10, &length, 8);
  ssize_t done = syscall(SYS_write, fd, head, sizeof head);
  if (bytes && length > 0) done = syscall(SYS_write, fd, bytes, length);
  (void)done;
  syscall(SYS_close, fd);
  pthread_mutex_unlock(&one);
}

ssize_t pwrite64(int fd, const void *bytes, size_t length, off64_t offset) {
  int file = watched(fd);
  if (file && file != 3 && failing('p')) { errno = ENOSPC; return -1; }
  ssize_t done = syscall(SYS_pwrite64, fd, bytes, length, offset);
  if (file && done > 0) note('w', file, offset, bytes, done);
  return done;
}
ssize_t pwrite(int fd, const void *bytes, size_t length, off_t offset) { return pwrite64(fd, bytes, length, offset); }

ssize_t write(int fd, const void *bytes, size_t length) {
  int file = watched(fd);
  int64_t offset = file ? lseek(fd, 0, SEEK_CUR) : 0;
  ssize_t done = syscall(SYS_write, fd, bytes, length);
  if (done < 0) return done;
  if (file && done > 0) note('w', file, offset, bytes, done);
  return done;
}

int ftruncate64(int fd, off64_t length) {
  int file = watched(fd);
  int done = syscall(SYS_ftruncate, fd, length);
  if (file && done == 0) note('t', file, length, 0, 0);
  return done;
}
int ftruncate(int fd, off_t length) { return ftruncate64(fd, length); }

static int synced(int fd, long call) {
  int file = watched(fd);
  if (file && failing('y')) { errno = EIO; return -1; }
  int done = syscall(call, fd);
  if (file && done == 0) note('s', file, 0, 0, 0);
  return done;
}
int fsync(int fd) { return synced(fd, SYS_fsync); }
int fdatasync(int fd) { return synced(fd, SYS_fdatasync); }
