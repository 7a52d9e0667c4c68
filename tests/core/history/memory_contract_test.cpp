#include "core/history/memory_store.h"
#include "tests/support/store_contract.h"

namespace pipwright::test {
namespace {

struct Memory {
    static std::unique_ptr<Store> make() { return std::make_unique<MemoryStore>(); }
    static std::unique_ptr<Store> reopened(std::unique_ptr<Store> store) { return store; }
};

INSTANTIATE_TYPED_TEST_SUITE_P(InMemory, StoreContract, Memory);

} // namespace
} // namespace pipwright::test
