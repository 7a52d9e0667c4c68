#pragma once

#include <array>
#include <cstddef>
#include <iterator>
#include <memory>
#include <utility>
#include <vector>

namespace pipwright {

/// A long list that is cheap to copy and to change in one place: copies share their chunks, and a
/// change copies only the chunk it falls into. For snapshots that differ in one tree.
template <typename T>
class Chunked {
  public:
    static constexpr std::size_t kChunk = 256;

    [[nodiscard]] std::size_t size() const { return m_size; }
    [[nodiscard]] bool empty() const { return m_size == 0; }
    const T& operator[](std::size_t at) const { return (*m_chunks[at / kChunk])[at % kChunk]; }

    void push_back(T value) { // NOLINT(readability-identifier-naming): as the standard lists
        if (m_size % kChunk == 0) {
            m_chunks.push_back(std::make_shared<Chunk>());
        }
        own(m_size / kChunk)[m_size % kChunk] = std::move(value);
        ++m_size;
    }

    /// The element, to be changed; other copies keep the old one.
    T& change(std::size_t at) { return own(at / kChunk)[at % kChunk]; }

    void resize(std::size_t size) {
        while (m_size < size) {
            push_back(T{});
        }
    }

    class Iterator {
      public:
        using iterator_category = std::forward_iterator_tag;
        using value_type = T;
        using difference_type = std::ptrdiff_t;
        using pointer = const T*;
        using reference = const T&;

        Iterator() = default;
        Iterator(const Chunked* list, std::size_t at) : m_list(list), m_at(at) {}
        const T& operator*() const { return (*m_list)[m_at]; }
        Iterator& operator++() {
            ++m_at;
            return *this;
        }
        Iterator operator++(int) {
            Iterator before = *this;
            ++m_at;
            return before;
        }
        bool operator==(const Iterator&) const = default;

      private:
        const Chunked* m_list = nullptr;
        std::size_t m_at = 0;
    };
    [[nodiscard]] Iterator begin() const { return {this, 0}; }
    [[nodiscard]] Iterator end() const { return {this, m_size}; }

  private:
    using Chunk = std::array<T, kChunk>;

    Chunk& own(std::size_t chunk) {
        if (m_chunks[chunk].use_count() != 1) {
            m_chunks[chunk] = std::make_shared<Chunk>(*m_chunks[chunk]);
        }
        return *m_chunks[chunk];
    }

    std::vector<std::shared_ptr<Chunk>> m_chunks;
    std::size_t m_size = 0;
};

} // namespace pipwright
