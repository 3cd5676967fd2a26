# SPDX-License-Identifier: GPL-3.0-or-later
# Files compiled into the program, so that it has no install path to lose.

# cordreach_embed(TARGET NAMESPACE n FUNCTION f FILES ...): a library whose n::f() answers a span of {name, content}.
function(cordreach_embed target)
  cmake_parse_arguments(E "" "NAMESPACE;FUNCTION" "FILES" ${ARGN})
  set(generated ${CMAKE_BINARY_DIR}/generated/${target}.cpp)
  add_custom_command(
    OUTPUT ${generated}
    COMMAND ${CMAKE_COMMAND} "-DFILES=${E_FILES}" -DOUTPUT=${generated} -DNAMESPACE=${E_NAMESPACE}
            -DFUNCTION=${E_FUNCTION} -P ${CMAKE_SOURCE_DIR}/cmake/embed.cmake
    DEPENDS ${E_FILES} ${CMAKE_SOURCE_DIR}/cmake/embed.cmake
    VERBATIM)
  add_library(${target} STATIC ${generated})
  target_link_libraries(${target} PRIVATE core_options)
endfunction()

file(GLOB table_files CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/tables/*.csv)
cordreach_embed(cordreach_table_data NAMESPACE cordreach::tables FUNCTION embeddedTables FILES ${table_files})
