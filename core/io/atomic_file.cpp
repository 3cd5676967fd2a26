// SPDX-License-Identifier: GPL-3.0-or-later
// POSIX calls, because the standard library has no way to say "on the disk now".
#include "io/atomic_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <cstring>
#include <optional>
#include <utility>

namespace cordreach::io {
namespace {

using base::Error;
namespace fs = std::filesystem;

constexpr std::string_view kReading = "io.cannot_read";
constexpr std::string_view kWriting = "io.cannot_write";

class Descriptor {
 public:
  explicit Descriptor(int number) : m_number(number) {}
  ~Descriptor() { (void)close(); }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  [[nodiscard]] bool isOpen() const { return m_number >= 0; }
  [[nodiscard]] int number() const { return m_number; }
  [[nodiscard]] bool close() {
    const int number = std::exchange(m_number, -1);
    return number < 0 || ::close(number) == 0;
  }

 private:
  int m_number;
};

Error fileError(int cause, const fs::path& path, std::string_view otherwise) {
  std::string code(otherwise);
  if (cause == ENOENT || cause == ENOTDIR) code = "io.not_found";
  if (cause == EISDIR) code = "io.is_folder";
  if (cause == EACCES || cause == EPERM || cause == EROFS) code = "io.no_permission";
  if (cause == ENOSPC || cause == EDQUOT) code = "io.disk_full";
  base::Arguments arguments;
  if (code == otherwise) arguments = {{"reason", std::string(std::strerror(cause))}};
  return Error{std::move(code), path.string(), std::move(arguments)};
}

// A temporary file is removed again unless it has taken its place.
class TemporaryFile {
 public:
  explicit TemporaryFile(std::string path) : m_path(std::move(path)) {}
  ~TemporaryFile() {
    if (!m_path.empty()) ::unlink(m_path.c_str());
  }
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  void keep() { m_path.clear(); }
  [[nodiscard]] const char* path() const { return m_path.c_str(); }

 private:
  std::string m_path;
};

bool writeAll(int descriptor, std::string_view content) {
  while (!content.empty()) {
    const ssize_t written = ::write(descriptor, content.data(), content.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return false;
    content.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

// Where the content belongs: the end of a chain of links, even one whose end is still missing.
fs::path linkEnd(fs::path path) {
  for (int step = 0; step < 40; ++step) {
    std::error_code ignored;
    if (!fs::is_symlink(fs::symlink_status(path, ignored))) return path;
    const fs::path next = fs::read_symlink(path, ignored);
    if (ignored) return path;
    path = next.is_absolute() ? next : path.parent_path() / next;
  }
  return path;
}

std::string temporaryName(const fs::path& target) {
  static std::atomic<unsigned> count{0};
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  const std::string name = "." + target.filename().string().substr(0, 100) + "." + std::to_string(::getpid()) + "." +
                           std::to_string(count.fetch_add(1)) + ".part";
  return (folder / name).string();
}

// A rename lives in the folder; without this it may be lost with the power. Some file systems can't: not an error.
void syncFolder(const fs::path& target) {
  const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
  const Descriptor descriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (descriptor.isOpen()) ::fsync(descriptor.number());
}

}  // namespace

base::Result<std::string> readWholeFile(const fs::path& path, std::size_t limitBytes) {
  const Descriptor descriptor(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY));
  if (!descriptor.isOpen()) return fileError(errno, path, kReading);
  struct stat status {};
  if (::fstat(descriptor.number(), &status) != 0) return fileError(errno, path, kReading);
  if (S_ISDIR(status.st_mode)) return Error{"io.is_folder", path.string(), {}};
  const Error tooLarge{"io.too_large", path.string(), {{"limit_mb", static_cast<double>(limitBytes >> 20)}}};
  if (S_ISREG(status.st_mode) && static_cast<std::size_t>(status.st_size) > limitBytes) return tooLarge;

  std::string text;
  std::array<char, 1 << 16> block{};
  while (true) {
    const ssize_t got = ::read(descriptor.number(), block.data(), block.size());
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return fileError(errno, path, kReading);
    if (got == 0) return text;
    text.append(block.data(), static_cast<std::size_t>(got));
    if (text.size() > limitBytes) return tooLarge;
  }
}

base::Result<base::Done> replaceFile(const fs::path& path, std::string_view content) {
  const fs::path target = linkEnd(path);
  struct stat old {};
  const bool exists = ::stat(target.c_str(), &old) == 0;
  if (!exists && errno != ENOENT) return fileError(errno, path, kWriting);
  if (exists && S_ISDIR(old.st_mode)) return Error{"io.is_folder", path.string(), {}};
  if (exists && !S_ISREG(old.st_mode)) return Error{"io.not_a_file", path.string(), {}};
  // A folder that may be written would let the rename replace a file that may not.
  if (exists && ::faccessat(AT_FDCWD, target.c_str(), W_OK, AT_EACCESS) != 0) return fileError(errno, path, kWriting);

  const std::string name = temporaryName(target);
  Descriptor descriptor(::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, exists ? 0600 : 0666));
  if (!descriptor.isOpen()) return fileError(errno, path, kWriting);
  TemporaryFile temporary(name);
  const bool written = writeAll(descriptor.number(), content) &&
                       (!exists || ::fchmod(descriptor.number(), old.st_mode & 07777) == 0) &&
                       ::fsync(descriptor.number()) == 0 && descriptor.close();
  if (!written) return fileError(errno, path, kWriting);
  if (::rename(temporary.path(), target.c_str()) != 0) return fileError(errno, path, kWriting);
  temporary.keep();
  syncFolder(target);
  return base::Done{};
}

}  // namespace cordreach::io
