# The hub's own tests run over both kinds of store: as hub_sqlite and as hub_postgres.
set(hub_tests "")
foreach(part access bulletin enter exchange service together)
  duskrow_test_program(hub_${part}_test SOURCES hub_${part}_test.cpp LINK duskrow_hub PkgConfig::sodium)
  list(APPEND hub_tests hub_${part}_test)
endforeach()
set(hub_files "")
foreach(test ${hub_tests})
  list(APPEND hub_files $<TARGET_FILE:${test}>)
endforeach()
add_custom_target(hub_sqlite DEPENDS ${hub_tests})
add_custom_target(hub_postgres DEPENDS ${hub_tests})
add_test(NAME hub_sqlite COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/hub_suite ${hub_files})
add_test(NAME hub_postgres COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/with_postgres
  ${CMAKE_CURRENT_SOURCE_DIR}/hub_suite ${hub_files})
set_tests_properties(hub_sqlite hub_postgres PROPERTIES FAIL_REGULAR_EXPRESSION "QWARN")

# Real processes, driven by a client that was written from FORMAT.md alone.
set(process_test /usr/bin/python3 ${CMAKE_CURRENT_SOURCE_DIR}/hub_process_test.py $<TARGET_FILE:duskrow-hub>)
add_custom_target(hub_process_sqlite DEPENDS duskrow-hub)
add_custom_target(hub_process_postgres DEPENDS duskrow-hub)
add_test(NAME hub_process_sqlite COMMAND ${process_test})
add_test(NAME hub_process_postgres COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/with_postgres ${process_test})
