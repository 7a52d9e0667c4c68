#pragma once

#include "core/store/connection.h"

namespace pipwright {

/// A change of the file that happens as a whole or not at all. It asks for the right to write at
/// once (BEGIN IMMEDIATE), because a reader that turns writer half-way cannot wait for another; it
/// is taken back unless it was committed. Private to core/store.
class Transaction {
  public:
    static Result<std::unique_ptr<Transaction>> begin(const Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    Outcome commit();

  private:
    explicit Transaction(const Connection& connection) : m_connection(connection) {}

    const Connection& m_connection;
    bool m_open = true;
};

} // namespace pipwright
