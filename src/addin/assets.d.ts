declare module "*.css";
declare module "*.png";
