# The numbered migrations, embedded into the program: a book must open without files beside it.
file(GLOB migrations CONFIGURE_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/migrations/*.sql)
list(SORT migrations)
set(PIPWRIGHT_MIGRATIONS "")
foreach(migration IN LISTS migrations)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${migration})
    file(READ ${migration} sql)
    get_filename_component(name ${migration} NAME_WE)
    string(REGEX REPLACE "^0*([0-9]+)_.*$" "\\1" version ${name})
    string(APPEND PIPWRIGHT_MIGRATIONS
        "    {${version}, \"${name}\", R\"migration(${sql})migration\"},\n")
endforeach()
file(CONFIGURE OUTPUT ${CMAKE_CURRENT_BINARY_DIR}/released_migrations.cpp @ONLY CONTENT
[=[// Made from core/store/migrations by core/store/migrations.cmake.
#include "core/store/migrator.h"

namespace pipwright {

std::span<const Migration> releasedMigrations() {
    static constexpr Migration kReleased[] = {
@PIPWRIGHT_MIGRATIONS@    };
    return kReleased;
}

} // namespace pipwright
]=])
target_sources(core_store PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/released_migrations.cpp)

# Qt SQL opens the file; rows are read and migrations cut into statements by the same library.
find_library(PIPWRIGHT_SQLITE sqlite3 REQUIRED)
target_link_libraries(core_store PRIVATE ${PIPWRIGHT_SQLITE})
