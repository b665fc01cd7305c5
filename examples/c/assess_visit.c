/* Assesses a visit record by a policy (TOML or JSON) and prints the assessment.
 *
 *     assess_visit RECORD [POLICY]
 */
#include <flamewright.h>
#include <stdio.h>
#include <stdlib.h>

/* The text of a file, ended with NUL; NULL if it cannot be read. */
static char *text_of(const char *path)
{
    FILE *file = fopen(path, "rb");
    char *text = NULL, *larger;
    size_t length = 0, room = 0, got = 1;
    if (file == NULL) {
        return NULL;
    }
    while (got > 0) {
        if (room - length < 2) {
            room = room * 2 + 4096;
            larger = realloc(text, room);
            if (larger == NULL) {
                break;
            }
            text = larger;
        }
        got = fread(text + length, 1, room - length - 1, file);
        length += got;
    }
    fclose(file);
    if (text != NULL) {
        text[length] = '\0';
    }
    return text;
}

int main(int count, char **words)
{
    char *record = count > 1 ? text_of(words[1]) : NULL;
    char *policy = count > 2 ? text_of(words[2]) : NULL;
    char *assessment = NULL;
    fw_status status;
    if (record == NULL || (count > 2 && policy == NULL)) {
        fprintf(stderr, "use: assess_visit RECORD [POLICY]; the files must be readable\n");
        return EXIT_FAILURE;
    }
    status = fw_visit_text(record, policy, &assessment);
    if (status == FW_OK) {
        printf("%s\n", assessment);
    } else {
        fprintf(stderr, "%s\n", fw_error_message());
    }
    fw_string_free(assessment);
    free(record);
    free(policy);
    return status == FW_OK ? EXIT_SUCCESS : EXIT_FAILURE;
}
