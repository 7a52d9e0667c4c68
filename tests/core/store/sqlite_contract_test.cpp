#include "core/store/orchard_book.h"
#include "tests/support/store_contract.h"
#include "tests/support/temporary_folder.h"

namespace pipwright::test {
namespace {

struct Sqlite {
    std::unique_ptr<Store> make() {
        m_file = m_folder.path() / ("book" + std::to_string(++m_count) + ".orchard");
        auto book = createBook(m_file);
        EXPECT_TRUE(book.ok()) << book.problem().sentence();
        return book ? std::move(*book) : nullptr;
    }
    std::unique_ptr<Store> reopened(std::unique_ptr<Store> store) {
        store.reset();
        auto book = openBook(m_file);
        EXPECT_TRUE(book.ok()) << book.problem().sentence();
        return book ? std::move(*book) : nullptr;
    }

  private:
    TemporaryFolder m_folder;
    std::filesystem::path m_file;
    int m_count = 0;
};

INSTANTIATE_TYPED_TEST_SUITE_P(InAFile, StoreContract, Sqlite);

} // namespace
} // namespace pipwright::test
