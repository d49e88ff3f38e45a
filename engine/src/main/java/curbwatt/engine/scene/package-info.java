/** What the vehicle goes through: phases one after the other, and the state it starts in. */
package curbwatt.engine.scene;
