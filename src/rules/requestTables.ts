import addresses from "../../rules/mailing-addresses.json";
import estimateReview from "../../rules/estimate-review.json";
import services from "../../rules/private-delivery-services.json";
import perfectionPeriod from "../../rules/perfection-period.json";
import issues from "../../rules/request-issues.json";
import requestLines from "../../rules/request-lines.json";
import methods from "../../rules/request-methods.json";
import streets from "../../rules/service-center-streets.json";
import { readDatedTable } from "./datedTable";
import { readListTable } from "./listTable";
import type { Written } from "./schema/schemas";

/** Reads the rules of the request itself. */
export const requestReaders = {
  requestLines: () => readListTable(requestLines as Written["request-lines"], "lines"),
  requestMethods: () => readListTable(methods as Written["request-methods"], "methods"),
  perfectionPeriod: () => readDatedTable(perfectionPeriod as Written["perfection-period"]),
  estimateReview: () => readDatedTable(estimateReview as Written["estimate-review"]),
  mailingAddresses: () => readListTable(addresses as Written["mailing-addresses"], "addresses"),
  serviceCenterStreets: () =>
    readListTable(streets as Written["service-center-streets"], "centers"),
  privateDeliveryServices: () =>
    readListTable(services as Written["private-delivery-services"], "services"),
  requestIssues: () => readListTable(issues as Written["request-issues"], "checks"),
};
