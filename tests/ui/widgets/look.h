#pragma once

#include "ui/widgets/theme.h"

#include <QApplication>
#include <QDir>
#include <QPixmap>
#include <QString>
#include <QWidget>

namespace pipwright::ui {

/// Dresses the test program as the user sees it.
inline void dress(ThemeChoice choice = ThemeChoice::light) {
    applyTheme(*static_cast<QApplication*>(QCoreApplication::instance()), choice);
}

/// Saves the widget in both themes into the folder named by PIPWRIGHT_LOOK, for eyes; does nothing
/// when that is not set.
inline void lookAt(QWidget& widget, const QString& name) {
    const QString folder = qEnvironmentVariable("PIPWRIGHT_LOOK");
    if (folder.isEmpty()) {
        return;
    }
    QDir().mkpath(folder);
    for (const auto choice : {ThemeChoice::light, ThemeChoice::dark}) {
        dress(choice);
        QApplication::processEvents();
        const qreal scale = widget.devicePixelRatioF();
        widget.grab().save(QStringLiteral("%1/%2-%3-%4.png")
                               .arg(folder, name, keyOf(choice))
                               .arg(static_cast<int>(100 * scale)));
    }
    dress();
}

} // namespace pipwright::ui
