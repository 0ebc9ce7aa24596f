import { assessHouse } from './assess-house.js';

console.log(await assessHouse());
