#include <cstddef>
#include <cstdlib>
#include <new>
#include <sys/mman.h>

// The program's own operator new: as the library's, but blocks of a mebibyte and more lie on large
// pages of memory where the system hands those out on request only. A column of a million numbers
// then costs a handful of page faults instead of thousands: of a pedigree of a million members or
// a model of a million scores they were more than half of the time.
//
// A sanitizer brings an operator new of its own, which is left in place.

#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)

namespace {

constexpr std::size_t kLargePage = std::size_t{2} << 20;
constexpr std::size_t kLeastLarge = std::size_t{1} << 20;

void* largeBlock(std::size_t size) {
    if (size > std::size_t{0} - kLargePage) {
        return nullptr;
    }
    const std::size_t whole = (size + kLargePage - 1) / kLargePage * kLargePage;
    void* block = std::aligned_alloc(kLargePage, whole);
    if (block != nullptr) {
        madvise(block, whole, MADV_HUGEPAGE); // a wish: without it the block is as good
    }
    return block;
}

} // namespace

void* operator new(std::size_t size) {
    while (true) {
        void* block = size < kLeastLarge ? std::malloc(size == 0 ? 1 : size) : largeBlock(size);
        if (block != nullptr) {
            return block;
        }
        const std::new_handler handler = std::get_new_handler();
        if (handler == nullptr) {
            throw std::bad_alloc();
        }
        handler();
    }
}

void operator delete(void* block) noexcept {
    std::free(block);
}

void operator delete(void* block, std::size_t /*size*/) noexcept {
    std::free(block);
}

#endif
