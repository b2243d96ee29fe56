/*
 * A disk that can be watched and that can fail. Loaded before libc into a program under test (LD_PRELOAD), it stands
 * between that program and every file below one folder. Files elsewhere are left alone.
 *
 * DISK_FOLDER   the folder
 * DISK_LOG      where to write down, in the order they happened, all that changes what the disk holds; none: nowhere
 * DISK_CONTROL  a file of struct control that both the program and the one testing it have in memory; none: no faults
 *
 * The log is read by witnessmark.abuse.DiskLog, the control is written by witnessmark.abuse.DiskControl: they and this
 * file change together.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <sys/sendfile.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <time.h>
#include <unistd.h>

enum { CREATE = 1, WRITE, TRUNCATE, SYNC, RENAME, UNLINK, SYNC_FOLDER, SAID };

/* Kinds of calls, as bits of control.kinds. */
enum { ON_READ = 1, ON_WRITE = 2, ON_TRUNCATE = 4, ON_SYNC = 8, ON_OPEN = 16, ON_RENAME = 32, ON_UNLINK = 64 };

struct control {
    int32_t kinds;   /* which calls count; 0 for none */
    int32_t at;      /* the call that fails, counted from 1 */
    int32_t error;   /* with which errno */
    int32_t forever; /* whether every later one fails too */
    int32_t count;   /* calls so far */
    int32_t failed;  /* calls that failed so far */
    int32_t slow;    /* which calls take their time; 0 for none */
    int32_t millis;  /* how long each of those takes */
};

struct record {
    int32_t type;
    int32_t name_length;
    int32_t data_length;
    int32_t unused;
    int64_t file; /* inode */
    int64_t offset;
};

#define PIECE 65536
#define MOST_FILES 65536
static int64_t inode_of[MOST_FILES]; /* by descriptor: 0 for a file elsewhere, -1 for one whose content is no matter */
static char *folder_of[MOST_FILES];  /* by descriptor: the path of a folder */
static char said_to[MOST_FILES];     /* by descriptor: whether what is written there is what the program says */

static pthread_mutex_t one_at_a_time = PTHREAD_MUTEX_INITIALIZER;
static const char *folder;
static size_t folder_length;
static int log_to = -1;
static struct control *control;

#define REAL(name) static __typeof__(name) *real_##name
REAL(open); REAL(openat); REAL(close); REAL(read); REAL(pread); REAL(write); REAL(pwrite); REAL(ftruncate);
REAL(fsync); REAL(fdatasync); REAL(rename); REAL(unlink); REAL(writev); REAL(sendfile64);

__attribute__((constructor)) static void begin(void) {
#define FIND(name) real_##name = (__typeof__(name) *)dlsym(RTLD_NEXT, #name)
    FIND(open); FIND(openat); FIND(close); FIND(read); FIND(pread); FIND(write); FIND(pwrite); FIND(ftruncate);
    FIND(fsync); FIND(fdatasync); FIND(rename); FIND(unlink); FIND(writev); FIND(sendfile64);
    const char *watched = getenv("DISK_FOLDER");
    const char *log = getenv("DISK_LOG");
    const char *shared = getenv("DISK_CONTROL");
    if (shared) {
        int file = real_open(shared, O_RDWR);
        void *at = file < 0 ? MAP_FAILED : mmap(0, sizeof *control, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
        if (at == MAP_FAILED) abort();
        control = at;
    }
    if (log && (log_to = real_open(log, O_WRONLY | O_CREAT | O_APPEND, 0600)) < 0) abort();
    if (watched) {
        folder_length = strlen(watched);
        folder = strdup(watched);
    }
}

static int is_ours(const char *path) {
    return folder && path && strncmp(path, folder, folder_length) == 0
        && (path[folder_length] == '/' || path[folder_length] == 0);
}

static int ends(const char *path, const char *with) {
    size_t all = strlen(path), end = strlen(with);
    return all >= end && strcmp(path + all - end, with) == 0;
}

static int is_watched(int fd) {
    return fd >= 0 && fd < MOST_FILES && (inode_of[fd] || folder_of[fd]);
}

/* Whether this call is to fail; errno is set then. */
static int fails(int kind) {
    if (!control || !(control->kinds & kind)) return 0;
    int32_t number = __sync_add_and_fetch(&control->count, 1);
    if (number != control->at && !(control->forever && number > control->at)) return 0;
    __sync_add_and_fetch(&control->failed, 1);
    errno = control->error;
    return 1;
}

/* A slow disk keeps whoever calls it waiting, and nobody else. */
static void dawdle(int kind) {
    if (!control || !(control->slow & kind)) return;
    struct timespec pause = {control->millis / 1000, control->millis % 1000 * 1000000L};
    int kept = errno;
    nanosleep(&pause, 0);
    errno = kept;
}

static void note(int type, int64_t file, int64_t offset, const char *name, const void *data, size_t length) {
    if (log_to < 0) return;
    int kept = errno;
    struct record record = {type, name ? (int32_t)strlen(name) : 0, (int32_t)length, 0, file, offset};
    struct iovec parts[3] = {
        {&record, sizeof record}, {(void *)name, (size_t)record.name_length}, {(void *)data, length}};
    if (real_writev(log_to, parts, 3) != (ssize_t)(sizeof record + record.name_length + length)) abort();
    errno = kept;
}

/* What was known of a descriptor is no longer true. */
static void forget(int fd) {
    if (!is_watched(fd)) return;
    pthread_mutex_lock(&one_at_a_time);
    inode_of[fd] = 0;
    said_to[fd] = 0;
    free(folder_of[fd]);
    folder_of[fd] = 0;
    pthread_mutex_unlock(&one_at_a_time);
}

/* Takes note of a file that was opened. */
static int opened(int fd, const char *path, int flags, int was_there) {
    if (fd < 0 || fd >= MOST_FILES) return fd;
    struct stat found;
    if (fstat(fd, &found)) return fd;
    free(folder_of[fd]);
    folder_of[fd] = 0;
    inode_of[fd] = 0;
    if (S_ISDIR(found.st_mode)) {
        folder_of[fd] = strdup(path);
        return fd;
    }
    said_to[fd] = ends(path, ".said");
    inode_of[fd] = ends(path, "-shm") ? -1 : (int64_t)found.st_ino; /* what is shared in memory is lost anyway */
    if (inode_of[fd] < 0 || said_to[fd]) return fd;
    if (!was_there) note(CREATE, inode_of[fd], 0, path, 0, 0);
    if ((flags & O_TRUNC) && was_there) note(TRUNCATE, inode_of[fd], 0, 0, 0, 0);
    return fd;
}

static int open_any(const char *path, int flags, mode_t mode) {
    if (!is_ours(path)) {
        int elsewhere = real_open(path, flags, mode);
        forget(elsewhere); /* libc closes some descriptors itself */
        return elsewhere;
    }
    pthread_mutex_lock(&one_at_a_time);
    struct stat found;
    int was_there = stat(path, &found) == 0;
    int fd = fails(ON_OPEN) ? -1 : opened(real_open(path, flags, mode), path, flags, was_there);
    pthread_mutex_unlock(&one_at_a_time);
    return fd;
}

#define MODE_OF(flags)                             \
    mode_t mode = 0;                               \
    if ((flags) & (O_CREAT | O_TMPFILE)) {         \
        va_list more;                              \
        va_start(more, flags);                     \
        mode = va_arg(more, mode_t);               \
        va_end(more);                              \
    }

int open(const char *path, int flags, ...) { MODE_OF(flags) return open_any(path, flags, mode); }
int open64(const char *path, int flags, ...) { MODE_OF(flags) return open_any(path, flags, mode); }
int openat(int at, const char *path, int flags, ...) {
    MODE_OF(flags) return is_ours(path) ? open_any(path, flags, mode) : real_openat(at, path, flags, mode);
}
int openat64(int at, const char *path, int flags, ...) {
    MODE_OF(flags) return is_ours(path) ? open_any(path, flags, mode) : real_openat(at, path, flags, mode);
}

int close(int fd) {
    forget(fd);
    return real_close(fd);
}

static ssize_t write_any(int fd, const void *data, size_t length, int64_t at) {
    dawdle(ON_WRITE);
    pthread_mutex_lock(&one_at_a_time);
    int64_t offset = at >= 0 ? at : lseek(fd, 0, SEEK_CUR);
    if (at < 0 && (fcntl(fd, F_GETFL) & O_APPEND)) {
        struct stat found;
        offset = fstat(fd, &found) ? offset : found.st_size;
    }
    int broken = !said_to[fd] && fails(ON_WRITE);
    size_t whole = length;
    if (broken) length /= 2; /* a disk that fails has often written a part */
    int why = errno;
    ssize_t done = at >= 0 ? real_pwrite(fd, data, length, at) : real_write(fd, data, length);
    if (done > 0 && inode_of[fd] > 0) note(said_to[fd] ? SAID : WRITE, inode_of[fd], offset, 0, data, (size_t)done);
    if (broken && whole) {
        errno = why;
        done = -1;
    }
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

ssize_t write(int fd, const void *data, size_t length) {
    return is_watched(fd) ? write_any(fd, data, length, -1) : real_write(fd, data, length);
}
ssize_t pwrite(int fd, const void *data, size_t length, off_t at) {
    return is_watched(fd) ? write_any(fd, data, length, at) : real_pwrite(fd, data, length, at);
}
ssize_t pwrite64(int fd, const void *data, size_t length, off64_t at) { return pwrite(fd, data, length, at); }

ssize_t writev(int fd, const struct iovec *parts, int many) {
    if (!is_watched(fd)) return real_writev(fd, parts, many);
    ssize_t all = 0;
    for (int i = 0; i < many; i++) {
        ssize_t done = write_any(fd, parts[i].iov_base, parts[i].iov_len, -1);
        if (done < 0) return all ? all : -1;
        all += done;
    }
    return all;
}

/* What goes from file to file within the system is written piece by piece, so that it can be watched and can fail. */
ssize_t sendfile64(int to, int from, off64_t *at, size_t length) {
    if (!is_watched(to) || !at) return real_sendfile64(to, from, at, length);
    if (length > PIECE) length = PIECE;
    char *piece = malloc(length); /* threads of Java have no stack to spare */
    if (!piece) abort();
    ssize_t got = real_pread(from, piece, length, *at);
    ssize_t done = got > 0 ? write_any(to, piece, (size_t)got, -1) : got;
    free(piece);
    if (done > 0) *at += done;
    return done;
}

ssize_t read(int fd, void *data, size_t length) {
    return is_watched(fd) && fails(ON_READ) ? -1 : real_read(fd, data, length);
}
ssize_t pread(int fd, void *data, size_t length, off_t at) {
    return is_watched(fd) && fails(ON_READ) ? -1 : real_pread(fd, data, length, at);
}
ssize_t pread64(int fd, void *data, size_t length, off64_t at) { return pread(fd, data, length, at); }

int ftruncate(int fd, off_t length) {
    if (!is_watched(fd)) return real_ftruncate(fd, length);
    pthread_mutex_lock(&one_at_a_time);
    int done = fails(ON_TRUNCATE) ? -1 : real_ftruncate(fd, length);
    if (done == 0 && inode_of[fd] > 0 && !said_to[fd]) note(TRUNCATE, inode_of[fd], length, 0, 0, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}
int ftruncate64(int fd, off64_t length) { return ftruncate(fd, length); }

static int sync_any(int fd, int (*real)(int)) {
    if (!is_watched(fd)) return real(fd);
    dawdle(ON_SYNC);
    pthread_mutex_lock(&one_at_a_time);
    int done = fails(ON_SYNC) ? -1 : real(fd);
    if (done == 0 && folder_of[fd]) note(SYNC_FOLDER, 0, 0, folder_of[fd], 0, 0);
    else if (done == 0 && inode_of[fd] > 0) note(SYNC, inode_of[fd], 0, 0, 0, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}
int fsync(int fd) { return sync_any(fd, real_fsync); }
int fdatasync(int fd) { return sync_any(fd, real_fdatasync); }

int rename(const char *from, const char *to) {
    if (!is_ours(from) && !is_ours(to)) return real_rename(from, to);
    pthread_mutex_lock(&one_at_a_time);
    int done = fails(ON_RENAME) ? -1 : real_rename(from, to);
    if (done == 0) note(RENAME, 0, 0, from, to, strlen(to));
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}

int unlink(const char *path) {
    if (!is_ours(path)) return real_unlink(path);
    pthread_mutex_lock(&one_at_a_time);
    int done = fails(ON_UNLINK) ? -1 : real_unlink(path);
    if (done == 0) note(UNLINK, 0, 0, path, 0, 0);
    pthread_mutex_unlock(&one_at_a_time);
    return done;
}
