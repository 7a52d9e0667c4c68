#pragma once

#include "core/units/result.h"

#include <filesystem>
#include <memory>

namespace pipwright {

/// Says that one program writes to a book: a file beside it, NAME.orchard-lock, held by a lock of
/// the operating system, so that a crash frees it. Inside stands who holds it. Private to
/// core/store.
class WriterLock {
  public:
    /// `busy` when somebody else holds it, with the machine and process.
    static Result<std::unique_ptr<WriterLock>> take(const std::filesystem::path& book);
    ~WriterLock();
    WriterLock(const WriterLock&) = delete;
    WriterLock& operator=(const WriterLock&) = delete;

  private:
    WriterLock(std::filesystem::path file, int descriptor)
        : m_file(std::move(file)), m_descriptor(descriptor) {}

    std::filesystem::path m_file;
    int m_descriptor;
};

} // namespace pipwright
