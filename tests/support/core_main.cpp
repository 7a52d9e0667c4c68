#include <QCoreApplication>

#include <gtest/gtest.h>

/// Qt loads the SQLite driver as a plugin, and looks for plugins only when there is an application.
int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
