# resources/tables/*.csv compiled into the program, so that it has no install path to lose.
file(GLOB table_files CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/tables/*.csv)
set(generated ${CMAKE_BINARY_DIR}/generated/table_data.cpp)
add_custom_command(
  OUTPUT ${generated}
  COMMAND ${CMAKE_COMMAND} "-DFILES=${table_files}" -DOUTPUT=${generated} -P ${CMAKE_SOURCE_DIR}/cmake/embed.cmake
  DEPENDS ${table_files} ${CMAKE_SOURCE_DIR}/cmake/embed.cmake
  VERBATIM)
add_library(cordreach_table_data STATIC ${generated})
target_link_libraries(cordreach_table_data PRIVATE core_options)
