/* Calls the core as it was built without the standard library. */
#include <math.h>
#include <stddef.h>
#include <stdio.h>

/* Named by the unwinding tables of the compiled `alloc`, which a program that aborts never follows. */
void rust_eh_personality(void)
{
}

double bare_density(size_t *calculations);

int main(void)
{
    size_t calculations = 0;
    double density = bare_density(&calculations);
    printf("without the standard library: %zu calculations; water at 60 degC has %.3f kg/m3\n", calculations, density);
    /* IAPWS-95 gives 983.20 kg/m3 at 0.1013 MPa; IF97 agrees to the second decimal (from memory). */
    return calculations > 90 && fabs(density - 983.2) < 0.3 ? 0 : 1;
}
