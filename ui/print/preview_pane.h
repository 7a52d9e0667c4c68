#pragma once

#include "core/exchange/print/page.h"

#include <QWidget>

#include <vector>

class QLabel;
class QToolButton;

namespace pipwright::ui {

class PagePreview;

/// The preview with a line of buttons above it: turn pages, zoom, true size, whole page.
class PreviewPane : public QWidget {
    Q_OBJECT

  public:
    explicit PreviewPane(QWidget* parent = nullptr);

    void setPages(std::vector<Page> pages);
    [[nodiscard]] PagePreview* preview() const { return m_preview; }

  private:
    void updateButtons();

    PagePreview* m_preview;
    QToolButton* m_back;
    QToolButton* m_forward;
    QLabel* m_where;
    QLabel* m_zoom;
};

} // namespace pipwright::ui
