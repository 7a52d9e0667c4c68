#pragma once

#include <QString>
#include <QVariant>

#include <vector>

namespace pipwright::app {

/// Figures for a terminal, a spreadsheet or another program: the same rows in three forms.
class FigureTable {
  public:
    enum class Form { text, csv, json };

    struct Column {
        QString key;      ///< of CSV and JSON, unit included: "merit_points"
        QString heading;  ///< on the terminal
        int decimals = 1; ///< of numbers
    };

    explicit FigureTable(std::vector<Column> columns) : m_columns(std::move(columns)) {}

    /// One cell a column: QString, int, double, or an invalid QVariant for what is not known.
    void row(std::vector<QVariant> cells) { m_rows.push_back(std::move(cells)); }
    /// A sentence below the table. CSV leaves it out.
    void note(const QString& sentence) { m_notes.push_back(sentence); }

    /// On standard output.
    void print(Form form) const;

  private:
    [[nodiscard]] QString textOf(const QVariant& cell, const Column& column, Form form) const;
    void printText() const;
    void printCsv() const;
    void printJson() const;

    std::vector<Column> m_columns;
    std::vector<std::vector<QVariant>> m_rows;
    std::vector<QString> m_notes;
};

} // namespace pipwright::app
