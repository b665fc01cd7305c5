/// Version of the binary interface that this header describes; compare it with fw_abi_version().
///
/// Within one version a function, a struct, a field, a type or a number that is here stays as it is;
/// only new functions, structs and numbers may come. What must change otherwise raises this number,
/// and with it the name of the shared library.
pub const FW_ABI_VERSION: u32 = 1;
