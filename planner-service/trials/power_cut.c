/* Loaded before the C library into a process whose power will be cut. Whatever the process writes below STIRTIDE_POWER_FOLDER
 * is noted in STIRTIDE_POWER_NOTES, old bytes and new ones, one file of notes for each file written, until the file is
 * forced to the disk: then its notes are dropped. What is noted when the process is killed may or may not be on the disk
 * after a power cut; power_cut.py does that. With STIRTIDE_POWER_LIES set, forcing keeps the notes of files with that in
 * their names, as a disk that says "done" and is not. While the file STIRTIDE_POWER_FAILS is there, forcing
 * fails with EIO, or with an S in that file never comes back. Names of files count as on the disk at once.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* One change, then its old bytes, then its new ones. A change of length has none of these, and its offset is the new length. */
struct note {
    uint64_t resizes, offset, old_size, old_length, new_length;
};

static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;
static const char *folder, *notes;

#define REAL(name) ((__typeof__(&name)) dlsym(RTLD_NEXT, #name))

__attribute__((constructor)) static void begin(void) {
    folder = getenv("STIRTIDE_POWER_FOLDER");
    notes = getenv("STIRTIDE_POWER_NOTES");
}

static int noted(const char *path) {
    return folder && notes && strncmp(path, folder, strlen(folder)) == 0 && path[strlen(folder)] == '/';
}

/* The path of an open file that is noted. */
static int noted_file(int fd, char *path) {
    char link[64];
    struct stat what;
    if (!folder || fstat(fd, &what) || !S_ISREG(what.st_mode)) return 0;
    snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    ssize_t length = readlink(link, path, PATH_MAX - 1);
    if (length < 0) return 0;
    path[length] = 0;
    return noted(path);
}

static void notes_of(const char *path, char *name) {
    snprintf(name, PATH_MAX, "%s/%s", notes, path + strlen(folder) + 1);
    for (char *at = name + strlen(notes) + 1; *at; at++)
        if (*at == '/') *at = '%';
}

static void put(const char *path, struct note note, const void *old, const void *fresh) {
    char name[PATH_MAX];
    notes_of(path, name);
    int fd = REAL(open)(name, O_WRONLY | O_CREAT | O_APPEND, 0600);
    uint64_t length = sizeof note + note.old_length + note.new_length;
    char *all = malloc(length);
    memcpy(all, &note, sizeof note);
    memcpy(all + sizeof note, old, note.old_length);
    memcpy(all + sizeof note + note.old_length, fresh, note.new_length);
    if (fd < 0 || REAL(write)(fd, all, length) != (ssize_t) length) abort();
    free(all);
    close(fd);
}

/* Bytes of a file as they are, fewer at its end. */
static uint64_t bytes(const char *path, uint64_t offset, uint64_t length, char **old) {
    int fd = REAL(open)(path, O_RDONLY);
    *old = malloc(length + 1);
    ssize_t got = fd < 0 ? 0 : pread(fd, *old, length, offset);
    if (fd >= 0) close(fd);
    return got < 0 ? 0 : got;
}

static void note_write(int fd, const char *path, const void *fresh, uint64_t length, int64_t offset) {
    struct stat now;
    fstat(fd, &now);
    if (offset < 0) offset = fcntl(fd, F_GETFL) & O_APPEND ? now.st_size : lseek(fd, 0, SEEK_CUR);
    char *old;
    struct note note = {0, offset, now.st_size, 0, length};
    note.old_length = bytes(path, offset, length, &old);
    put(path, note, old, fresh);
    free(old);
}

static void note_size(const char *path, uint64_t to) {
    struct stat now;
    if (stat(path, &now) || (uint64_t) now.st_size == to) return;
    char *old;
    struct note note = {1, to, now.st_size, 0, 0};
    if (to < note.old_size) note.old_length = bytes(path, to, note.old_size - to, &old);
    else old = calloc(1, 1);
    put(path, note, old, "");
    free(old);
}

#define WITH(fd, work)                                  \
    char path[PATH_MAX];                                \
    pthread_mutex_lock(&lock);                          \
    if (noted_file(fd, path)) work;

#define DONE(call)                                      \
    __typeof__(call) done = call;                       \
    int saved = errno;                                  \
    pthread_mutex_unlock(&lock);                        \
    errno = saved;                                      \
    return done;

ssize_t pwrite64(int fd, const void *from, size_t length, off64_t offset) {
    WITH(fd, note_write(fd, path, from, length, offset))
    DONE(REAL(pwrite64)(fd, from, length, offset))
}

ssize_t pwrite(int fd, const void *from, size_t length, off_t offset) {
    WITH(fd, note_write(fd, path, from, length, offset))
    DONE(REAL(pwrite)(fd, from, length, offset))
}

ssize_t write(int fd, const void *from, size_t length) {
    char path[PATH_MAX];
    /* A socket may wait for long. */
    if (!noted_file(fd, path)) return REAL(write)(fd, from, length);
    pthread_mutex_lock(&lock);
    note_write(fd, path, from, length, -1);
    DONE(REAL(write)(fd, from, length))
}

int ftruncate64(int fd, off64_t to) {
    WITH(fd, note_size(path, to))
    DONE(REAL(ftruncate64)(fd, to))
}

int ftruncate(int fd, off_t to) {
    WITH(fd, note_size(path, to))
    DONE(REAL(ftruncate)(fd, to))
}

static void forced(int fd, int failed) {
    char path[PATH_MAX], name[PATH_MAX];
    const char *lies = getenv("STIRTIDE_POWER_LIES");
    if (failed || !noted_file(fd, path) || (lies && strstr(path, lies))) return;
    notes_of(path, name);
    REAL(unlink)(name);
}

/* Whether forcing is to fail; what the disk then holds of the file nobody knows. */
static int fails(int fd) {
    char path[PATH_MAX];
    const char *there = getenv("STIRTIDE_POWER_FAILS");
    if (!there || access(there, F_OK) || !noted_file(fd, path)) return 0;
    char *how;
    int stalls = bytes(there, 0, 1, &how) == 1 && *how == 'S';
    free(how);
    while (stalls) pause();
    errno = EIO;
    return 1;
}

int fsync(int fd) {
    pthread_mutex_lock(&lock);
    int failed = fails(fd) ? -1 : REAL(fsync)(fd);
    forced(fd, failed);
    DONE(failed)
}

int fdatasync(int fd) {
    pthread_mutex_lock(&lock);
    int failed = fails(fd) ? -1 : REAL(fdatasync)(fd);
    forced(fd, failed);
    DONE(failed)
}

static void opening(const char *path, int flags) {
    if (!(flags & O_TRUNC) || !noted(path)) return;
    pthread_mutex_lock(&lock);
    note_size(path, 0);
    pthread_mutex_unlock(&lock);
}

#define OPEN(name)                                      \
    int name(const char *path, int flags, ...) {        \
        va_list rest;                                   \
        va_start(rest, flags);                          \
        mode_t mode = va_arg(rest, mode_t);             \
        va_end(rest);                                   \
        opening(path, flags);                           \
        return REAL(name)(path, flags, mode);           \
    }

OPEN(open)
OPEN(open64)

int unlink(const char *path) {
    char name[PATH_MAX];
    if (noted(path)) {
        notes_of(path, name);
        REAL(unlink)(name);
    }
    return REAL(unlink)(path);
}

/* What was not forced under the old name is not forced under the new one. */
int rename(const char *from, const char *to) {
    char old[PATH_MAX], fresh[PATH_MAX];
    pthread_mutex_lock(&lock);
    int failed = REAL(rename)(from, to);
    if (!failed && noted(from) && noted(to)) {
        notes_of(from, old);
        notes_of(to, fresh);
        if (REAL(rename)(old, fresh)) REAL(unlink)(fresh);
    }
    DONE(failed)
}
