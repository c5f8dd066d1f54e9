// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/apart.h"

#include "core/base/phrase.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <deque>
#include <fcntl.h>
#include <fstream>
#include <new>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <system_error>
#include <thread>
#include <unistd.h>

namespace coneline::labels {

namespace {

using Clock = std::chrono::steady_clock;
using Reader = std::function<ReadPicture(const std::string&)>;

/// One line of JSON without line breaks in it. Bytes that are no UTF-8 cannot cross and are
/// replaced.
std::string packed(const ReadPicture& picture) {
  nlohmann::json codes = nlohmann::json::array();
  for (const auto& code : picture.codes)
    codes.push_back({code.text, code.format, code.x, code.y});
  nlohmann::json line{{"codes", codes}};
  if (picture.error)
    line["error"] = *picture.error;
  return line.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace) + '\n';
}

void unpack(const std::string& line, ReadPicture& picture) {
  const auto parsed = nlohmann::json::parse(line);
  for (const auto& code : parsed.at("codes"))
    picture.codes.push_back({code.at(0), code.at(1), code.at(2), code.at(3)});
  if (parsed.contains("error"))
    picture.error = parsed.at("error").get<std::string>();
}

void set_limit(int what, rlim_t value) {
  rlimit limit{};
  getrlimit(static_cast<__rlimit_resource_t>(what), &limit);
  limit.rlim_cur = std::min(value, limit.rlim_max);
  setrlimit(static_cast<__rlimit_resource_t>(what), &limit);
}

void confine(const Limits& limits) {
  prctl(PR_SET_PDEATHSIG, SIGKILL); // not to outlive the program
  set_limit(RLIMIT_CORE, 0);
  std::ifstream statm("/proc/self/statm");
  rlim_t pages = 0;
  if (statm >> pages)
    set_limit(RLIMIT_AS, pages * static_cast<rlim_t>(sysconf(_SC_PAGESIZE)) +
                             static_cast<rlim_t>(limits.memory));
  // What a failing library prints is no message for a grower.
  const int nowhere = open("/dev/null", O_RDWR | O_CLOEXEC);
  dup2(nowhere, STDOUT_FILENO);
  dup2(nowhere, STDERR_FILENO);
}

void send(int pipe, const std::string& line) {
  std::size_t sent = 0;
  while (sent < line.size()) {
    const auto count = write(pipe, line.data() + sent, line.size() - sent);
    if (count < 0 && errno != EINTR)
      _exit(1);
    sent += count > 0 ? static_cast<std::size_t>(count) : 0;
  }
}

ReadPicture read_safely(const Reader& read, const std::string& file, const Limits& limits) {
  try {
    return read(file);
  } catch (const std::bad_alloc&) {
    return {file,
            {},
            phrase("the picture needs more than {} MB of memory to read. Save it "
                   "smaller",
                   limits.memory / 1'000'000)};
  } catch (const std::exception& problem) {
    return {file, {}, phrase("the picture could not be read: {}", problem.what())};
  }
}

/// A reading process and the files it still has to do.
class Worker {
 public:
  Worker(std::span<const std::string> files, std::deque<std::size_t> todo, const Reader& read,
         const Limits& limits)
      : files_(files), todo_(std::move(todo)), read_(read), limits_(limits) {
    start();
  }

  [[nodiscard]] bool busy() const { return pid_ > 0; }
  [[nodiscard]] int pipe() const { return pipe_; }
  [[nodiscard]] Clock::time_point deadline() const { return deadline_; }

  /// Takes what the process has sent. Returns how many files were finished by it.
  std::size_t take(std::vector<ReadPicture>& results) {
    std::array<char, 65536> chunk{};
    const auto count = ::read(pipe_, chunk.data(), chunk.size());
    if (count < 0)
      return 0;
    if (count == 0)
      return end(results);
    received_.append(chunk.data(), static_cast<std::size_t>(count));
    std::size_t done = 0;
    for (auto stop = received_.find('\n'); stop != std::string::npos; stop = received_.find('\n')) {
      unpack(received_.substr(0, stop), results[todo_.front()]);
      received_.erase(0, stop + 1);
      todo_.pop_front();
      deadline_ = Clock::now() + limits_.time;
      ++done;
    }
    return done;
  }

  /// Ends a process that took too long.
  std::size_t give_up(std::vector<ReadPicture>& results) {
    kill(pid_, SIGKILL);
    late_ = true;
    return end(results);
  }

 private:
  void start() {
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0)
      throw std::system_error(errno, std::generic_category(), "a pipe to read pictures");
    pid_ = fork();
    if (pid_ < 0) {
      close(ends[0]);
      close(ends[1]);
      throw std::system_error(errno, std::generic_category(), "a process to read pictures");
    }
    if (pid_ == 0) {
      close(ends[0]);
      confine(limits_);
      for (const auto i : todo_)
        send(ends[1], packed(read_safely(read_, files_[i], limits_)));
      _exit(0);
    }
    close(ends[1]);
    pipe_ = ends[0];
    received_.clear();
    late_ = false;
    deadline_ = Clock::now() + limits_.time;
  }

  /// The process is gone. Whatever it was at has failed; a new one goes on with the rest.
  std::size_t end(std::vector<ReadPicture>& results) {
    int status = 0;
    while (waitpid(pid_, &status, 0) < 0 && errno == EINTR) {
    }
    close(pipe_);
    pid_ = 0;
    if (todo_.empty())
      return 0;
    results[todo_.front()].error =
        late_ ? phrase("reading took longer than {} s and was given up. Save the picture "
                       "smaller",
                       std::chrono::duration<double>(limits_.time).count())
              : phrase("the picture brought its reader down ({} {}). Take it again, or save "
                       "it as PNG",
                       WIFSIGNALED(status) ? "signal" : "status",
                       WIFSIGNALED(status) ? WTERMSIG(status) : WEXITSTATUS(status));
    todo_.pop_front();
    if (!todo_.empty())
      start();
    return 1;
  }

  std::span<const std::string> files_;
  std::deque<std::size_t> todo_;
  const Reader& read_;
  Limits limits_;
  pid_t pid_ = 0;
  int pipe_ = -1;
  bool late_ = false;
  std::string received_;
  Clock::time_point deadline_;
};

/// Waits until a process has something to say or is late, and takes it.
std::size_t attend(std::vector<Worker>& workers, std::vector<ReadPicture>& results) {
  std::vector<pollfd> waits;
  auto first = Clock::time_point::max();
  for (const auto& worker : workers) {
    waits.push_back({worker.busy() ? worker.pipe() : -1, POLLIN, 0});
    if (worker.busy())
      first = std::min(first, worker.deadline());
  }
  const auto left = std::chrono::ceil<std::chrono::milliseconds>(first - Clock::now()).count();
  poll(waits.data(), waits.size(), static_cast<int>(std::clamp<std::int64_t>(left, 0, 60'000)));
  std::size_t done = 0;
  for (std::size_t i = 0; i < workers.size(); ++i)
    if (waits[i].revents != 0)
      done += workers[i].take(results);
    else if (workers[i].busy() && Clock::now() >= workers[i].deadline())
      done += workers[i].give_up(results);
  return done;
}

} // namespace

std::vector<ReadPicture> read_apart(std::span<const std::string> files, const Reader& read,
                                    const Limits& limits,
                                    const std::function<void(std::size_t)>& progress) {
  std::vector<ReadPicture> results;
  for (const auto& file : files)
    results.push_back({file, {}, std::nullopt});
  const std::size_t cores = std::clamp(std::thread::hardware_concurrency(), 1U, 8U);
  std::vector<std::deque<std::size_t>> shares(std::min(cores, files.size()));
  for (std::size_t i = 0; i < files.size(); ++i)
    shares[i % shares.size()].push_back(i);
  std::vector<Worker> workers;
  workers.reserve(shares.size());
  for (auto& share : shares)
    workers.emplace_back(files, std::move(share), read, limits);
  std::size_t done = 0;
  while (std::ranges::any_of(workers, &Worker::busy)) {
    const auto more = attend(workers, results);
    done += more;
    if (progress && more > 0)
      progress(done);
  }
  return results;
}

} // namespace coneline::labels
